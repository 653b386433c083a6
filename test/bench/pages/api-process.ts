import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { repoRoot } from '../../../libs/config';

/** The API in a process of its own, as it runs in a shop. */
export class ApiProcess {
  private constructor(
    private readonly child: ChildProcess,
    readonly url: string,
  ) {}

  static async start(databaseUrl: string): Promise<ApiProcess> {
    const more = { DATABASE_URL: databaseUrl, PORT: '0', TIME_ZONE: 'UTC', LOG_LEVEL: 'warn' };
    const main = join(repoRoot(), 'dist', 'apps', 'api', 'src', 'main.js');
    const stdio = ['ignore', 'ignore', 'pipe'] as const;
    const child = spawn(process.execPath, [main], { env: { ...process.env, ...more }, stdio: [...stdio] });
    for await (const said of createInterface(child.stderr)) {
      const url = /answers at (\S+)/.exec(said)?.[1];
      if (url !== undefined) {
        child.stderr.resume();
        return new ApiProcess(child, url);
      }
    }
    throw new Error('The API ended before it said where it answers.');
  }

  /** Signs in and answers the cookie that stands for it. */
  async signIn(login: string, password: string): Promise<string> {
    const answer = await fetch(`${this.url}/api/session`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ login, password }),
    });
    if (!answer.ok) throw new Error(`${login} could not sign in: ${answer.status} ${await answer.text()}`);
    return answer.headers
      .getSetCookie()
      .map((cookie) => cookie.split(';')[0])
      .join('; ');
  }

  async stop(): Promise<void> {
    this.child.kill('SIGTERM');
    if (this.child.exitCode === null) await once(this.child, 'exit');
  }
}
