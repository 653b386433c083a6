import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { repoRoot } from '../../libs/config';

interface Locked {
  readonly integrity?: string;
  readonly resolved?: string;
  readonly inBundle?: boolean;
}

const { packages } = JSON.parse(readFileSync(join(repoRoot(), 'package-lock.json'), 'utf8')) as {
  packages: Record<string, Locked>;
};
// The entry without a name is the project itself; a package inside another's archive is covered by that one's hash.
const fetched = Object.entries(packages).filter(([name, { inBundle }]) => name !== '' && !inBundle);

describe('package-lock.json', () => {
  it('holds a hash for every package that is fetched', () => {
    expect(fetched.length).toBeGreaterThan(500);
    expect(fetched.filter(([, { integrity }]) => !integrity?.startsWith('sha512-')).map(([name]) => name)).toEqual([]);
  });

  it('names no host to fetch from, so that every machine uses the registry it is set to', () => {
    expect(fetched.filter(([, { resolved }]) => resolved !== undefined).map(([name]) => name)).toEqual([]);
  });
});
