import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { folderInRun } from '../../libs/testing';
import { repoRoot } from '../../libs/config';

/** A small house beside the real one, under the same law and with the same packages. */
function houseWith(files: Record<string, string>): string {
  const house = folderInRun('house');
  for (const room of ['apps', 'libs', 'test']) mkdirSync(join(house, room));
  for (const file of ['tsconfig.json', 'package.json']) copyFileSync(join(repoRoot(), file), join(house, file));
  symlinkSync(join(repoRoot(), 'node_modules'), join(house, 'node_modules'));
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(house, file)), { recursive: true });
    writeFileSync(join(house, file), text);
  }
  return house;
}

/** Runs the tool over that house with the law of the real one. */
function cruise(
  house: string,
  ...more: readonly string[]
): { readonly status: number | null; readonly stdout: string } {
  const tool = join(repoRoot(), 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const law = join(repoRoot(), '.dependency-cruiser.cjs');
  return spawnSync(process.execPath, [tool, '--config', law, 'apps', 'libs', 'test', ...more], {
    cwd: house,
    encoding: 'utf8',
  });
}

interface Cruise {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly rule: { readonly name: string } }[];
  };
}

const LAWFUL = {
  'libs/day/index.ts': 'export const day = 1;',
  'libs/day/inner.ts': 'export const inner = 1;',
  'libs/part-number/index.ts': "export { day } from '../day';",
  'libs/usecases/index.ts':
    "import { z } from 'zod';\nexport { day } from '../day';\nexport const schema = z.string();",
  'libs/store/index.ts':
    "import { Pool } from 'pg';\nexport { day } from '../usecases';\nexport const pool = new Pool();",
  'apps/api/main.ts': "export { pool } from '../../libs/store';",
};

const PLANTED = [
  ['a pure lib that opens the store', 'libs/day/a.ts', '../store', 'libs-day-opens-only-its-own-doors'],
  ['a lib that opens an app', 'libs/store/b.ts', '../../apps/api/main', 'libs-store-opens-only-its-own-doors'],
  ['an app that opens another app', 'apps/worker/c.ts', '../api/main', 'apps-worker-opens-only-its-own-doors'],
  ['a lib that is entered past its index', 'libs/part-number/d.ts', '../day/inner', 'a-lib-is-entered-by-its-index'],
  ['a pure lib that reads files', 'libs/fit-rules/e.ts', 'node:fs', 'a-pure-lib-does-no-io'],
  ['a use case that knows the framework', 'libs/usecases/f.ts', '@nestjs/common', 'use-cases-know-no-framework'],
  ['an app that asks the database itself', 'apps/api/g.ts', 'pg', 'only-the-store-knows-the-database'],
  ['an app that rings the queue itself', 'apps/worker/h.ts', 'bullmq', 'only-the-queue-knows-the-queue'],
  ['a program that needs a development package', 'apps/api/i.ts', 'jest', 'no-dev-dependency-in-production-code'],
  ['a file that imports one that imports it', 'libs/day/j.ts', './k', 'no-cycle'],
] as const;

describe('the import law', () => {
  it('lets a house pass whose imports all point one way', () => {
    expect(cruise(houseWith(LAWFUL))).toMatchObject({ status: 0 });
  }, 60_000);

  describe('with forbidden imports planted', () => {
    let objections: readonly string[] = [];
    beforeAll(() => {
      const planted = Object.fromEntries(PLANTED.map(([, file, imported]) => [file, `import '${imported}';`]));
      const house = houseWith({ ...LAWFUL, 'libs/day/k.ts': "import './j';", ...planted });
      const { summary } = JSON.parse(cruise(house, '--output-type', 'json').stdout) as Cruise;
      objections = summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`);
      expect(cruise(house).status).toBeGreaterThan(0);
    }, 120_000);

    it.each(PLANTED)('objects to %s', (_what, file, _imported, rule) => {
      expect(objections).toContain(`${file}: ${rule}`);
    });

    it('objects to nothing else in those files or the others', () => {
      expect(new Set(objections.map((objection) => objection.split(':')[0]))).toEqual(
        new Set(PLANTED.map(([, file]) => file)),
      );
    });
  });
});
