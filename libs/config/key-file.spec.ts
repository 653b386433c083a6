import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { keyOf } from './index';

describe('the key that secrets are sealed with', () => {
  const folder = mkdtempSync(join(tmpdir(), 'revright-key-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('is that of the environment where there is one', () => {
    expect(keyOf({ key: 'ab'.repeat(32), dataFolder: '/nowhere' })).toEqual(Buffer.alloc(32, 0xab));
  });

  it('is made once in the data folder, for nobody else to read', () => {
    const dataFolder = join(folder, 'data');
    const first = keyOf({ key: undefined, dataFolder });
    expect(first).toHaveLength(32);
    expect(keyOf({ key: undefined, dataFolder })).toEqual(first);
    expect(statSync(join(dataFolder, 'key')).mode & 0o077).toBe(0);
  });

  it('is refused in one sentence when the file holds something else', () => {
    writeFileSync(join(folder, 'key'), 'too short');
    expect(() => keyOf({ key: undefined, dataFolder: folder })).toThrow(/holds no key of 64 hexadecimal digits/);
  });
});
