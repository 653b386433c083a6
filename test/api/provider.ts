import { fork, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { repoRoot } from '../../libs/config';

export const CLIENT = { clientId: 'revright', clientSecret: 'known to the two of them alone' } as const;

/** A real OpenID Connect provider, on this machine. */
export class TestProvider {
  private constructor(
    private readonly process: ChildProcess,
    readonly issuer: string,
  ) {}

  static async open(): Promise<TestProvider> {
    const file = join(repoRoot(), 'test', 'api', 'provider-process.mjs');
    const child = fork(file, { execArgv: [], stdio: ['ignore', 'ignore', 'ignore', 'ipc'] });
    const { issuer } = (await heard(child)) as { issuer: string };
    return new TestProvider(child, issuer);
  }

  /** From now on it sends browsers back to that address and no other. */
  async sendsBackTo(redirectUri: string): Promise<void> {
    const ready = heard(this.process);
    this.process.send({ redirectUri, ...CLIENT });
    await ready;
  }

  close(): void {
    this.process.kill();
  }
}

function heard(child: ChildProcess): Promise<unknown> {
  return new Promise((resolve, reject) => {
    child.once('message', resolve).once('error', reject);
  });
}

/** A browser that keeps cookies and follows no redirect by itself. */
export class ProviderBrowser {
  private readonly jar = new Map<string, string>();

  /** Goes through sign-in and consent at the provider and answers with the address it sends the browser back to. */
  async signIn(address: string, login: string, backTo: string): Promise<URL> {
    let at = new URL(address);
    let form: URLSearchParams | undefined;
    for (let steps = 0; steps < 20; steps++) {
      if (at.href.startsWith(backTo)) return at;
      const answer = await this.ask(at, form);
      const next = answer.headers.get('location');
      if (next !== null) {
        at = new URL(next, at);
        form = undefined;
        continue;
      }
      const page = await answer.text();
      const prompt = /name="prompt" value="(\w+)"/.exec(page)?.[1];
      if (prompt === undefined) throw new Error(`The provider answered ${answer.status}: ${page.slice(0, 2_000)}`);
      form = new URLSearchParams({ prompt, login, password: 'any' });
    }
    throw new Error('The provider sends the browser round and round.');
  }

  private async ask(at: URL, form?: URLSearchParams): Promise<Response> {
    const cookie = [...this.jar].map(([name, value]) => `${name}=${value}`).join('; ');
    const answer = await fetch(at, {
      method: form ? 'POST' : 'GET',
      redirect: 'manual',
      headers: { cookie },
      ...(form ? { body: form } : {}),
    });
    for (const set of answer.headers.getSetCookie()) {
      const [name, value] = set.split(';')[0]!.split(/=(.*)/s) as [string, string];
      this.jar.set(name, value);
    }
    return answer;
  }
}
