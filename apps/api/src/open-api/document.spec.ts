import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { allControllers } from '../app.module';
import { repoRoot } from '../../../../libs/config';
import { describeApi } from './document';
import { operationsOf, tagOf } from './operations';
import { WORDS_KEY } from './says';

/** Runs one of the house's tools with a document on its standard input. */
function tool(name: string, document: object, ...args: string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(repoRoot(), 'apps', 'tools', name), ...args], {
    input: JSON.stringify(document),
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) throw new Error(stderr);
  return stdout;
}

describe('the description of the API', () => {
  it('has a sentence for every route and every group of routes', () => {
    const silent = operationsOf(allControllers()).filter(({ words }) => !words?.summary);
    expect(silent.map(({ id }) => `${id}: write @Says('...') on the route`)).toEqual([]);
    const nameless = allControllers().filter((controller) => !Reflect.hasMetadata(WORDS_KEY, controller));
    expect(nameless.map((controller) => `${tagOf(controller)}: write @Says('...') on the controller`)).toEqual([]);
  });

  it('says of every route what it answers, and with which schema or media type', () => {
    const silent = operationsOf(allControllers()).filter(
      ({ answer, mediaTypes, status }) => !answer && mediaTypes.length === 0 && status !== 204,
    );
    expect(silent.map(({ id }) => `${id}: @ZodResponse, or @Says('...', { answers: [...] })`)).toEqual([]);
  });

  it('passes the recommended rules of a linter from outside', () => {
    const found = JSON.parse(tool('lint-openapi.mjs', describeApi(allControllers()))) as {
      ruleId: string;
      severity: string;
      at: string;
    }[];
    expect(found.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(found.filter(({ ruleId }) => ruleId !== 'no-ambiguous-paths')).toEqual([]);
  }, 60_000);

  it('is where the page has the types of its client from (npm run api-types makes them anew)', () => {
    const kept = readFileSync(join(repoRoot(), 'apps', 'web', 'src', 'lib', 'api-types.ts'), 'utf8');
    expect(tool('api-types.mjs', describeApi(allControllers(), {}), '--print') === kept).toBe(true);
  }, 60_000);
});
