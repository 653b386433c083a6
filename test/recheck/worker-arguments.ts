import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { repoRoot } from '../../libs/config';

/** What Node.js is called with for `npm run worker`, paths from the root of the house. */
export function workerArguments(): string[] {
  const { scripts } = JSON.parse(readFileSync(join(repoRoot(), 'package.json'), 'utf8')) as {
    readonly scripts: { readonly worker: string };
  };
  return / node (--.*)$/.exec(scripts.worker)![1]!.split(' ');
}
