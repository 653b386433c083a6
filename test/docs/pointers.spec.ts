import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { repoRoot } from '../../libs/config';

const text = (file: string): string => readFileSync(join(repoRoot(), file), 'utf8');
const security = text('docs/SECURITY.md');
const asvs = text('docs/ASVS.md');

/** The rows of the tables of a guide, without those that name the columns. */
const rowsOf = (guide: string): string[] =>
  guide.split('\n').filter((line) => /^\| [\d,. to]+ +\|/.test(line) && !/^\|[\s|:-]+$/.test(line));

/** `access` for `test/api/access.spec.ts`, as the guide says before its tables. */
const shortNames = new Map(
  [...security.split('## ')[0]!.matchAll(/`([\w-]+)`(?: is)? `([^`]+\.spec\.ts)`/g)].map(([, name, file]) => [
    name!,
    file!,
  ]),
);

/** Where a path may begin that is told short. */
const ROOTS = ['', 'apps/api/src', 'apps/web/src', 'libs', 'libs/usecases'];
const FOLDERS = ['apps', 'libs', 'test', 'docs', 'prisma'];
const everyFile = FOLDERS.flatMap((folder) =>
  (readdirSync(join(repoRoot(), folder), { recursive: true }) as string[]).map((file) => join(folder, file)),
);

/** The file or folder a guide means; null where there is none, or several of that name. */
function resolved(path: string): string | null {
  const root = ROOTS.find((one) => existsSync(join(repoRoot(), one, path)));
  if (root !== undefined) return join(root, path);
  const named = everyFile.filter((file) => basename(file) === path);
  return named.length === 1 ? named[0]! : null;
}

const isPath = (code: string): boolean =>
  /^[\w./-]+$/.test(code) && (code.includes('/') || /\.(ts|tsx|md|json)$/.test(code));

/** Every string that is written out in a source. */
const stringsIn = (source: string): string[] =>
  [...source.matchAll(/'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g)].map((found) =>
    (found[1] ?? found[2] ?? found[3]!).replace(/\\(.)/g, '$1'),
  );

/** `36: ...` fits whatever begins so; of a title with a gap of its own, such as `is refused with %s`, any filling fits. */
function names(told: string, title: string): boolean {
  const isOneOf = /%[sjd]/.test(title) && title.length > 10 && fits(told, title.split(/%[sjd]/));
  return isOneOf || fits(title, told.split(/\s*(?:\.\.\.|…)\s*/));
}

const fits = (text: string, parts: readonly string[]): boolean =>
  new RegExp(`^${parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.*')}$`, 's').test(text);

/** What of a row points nowhere: files that are not there, and tests that the file before them does not name. */
function pointsNowhere(row: string): string[] {
  const short = [...shortNames.keys()].join('|');
  const parts = row.matchAll(
    new RegExp(`\`([^\`]+)\`|\\b(docs/\\w+\\.md)|(?<![\\w-])(${short})(?=:| spec)|"([^"]+)"`, 'g'),
  );
  let file: string | null = null;
  const wrong: string[] = [];
  for (const [, code, guide, name, told] of parts) {
    const path = guide ?? (code !== undefined && isPath(code) && !code.startsWith('/') ? code : undefined);
    if (path !== undefined) {
      file = resolved(path);
      if (file === null) wrong.push(path);
    }
    if (name !== undefined) file = shortNames.get(name)!;
    if (told === undefined) continue;
    const source = file !== null && existsSync(join(repoRoot(), file)) ? text(file) : '';
    const found = file?.endsWith('.md') ? source.includes(told) : stringsIn(source).some((one) => names(told, one));
    if (!found) wrong.push(`"${told}" in ${file ?? 'no file'}`);
  }
  return wrong;
}

describe('what the guides to security point to', () => {
  it('is there: every file, and every test by its name', () => {
    const rows = [...rowsOf(security), ...rowsOf(asvs)];
    expect(rows.length).toBeGreaterThan(150);
    expect(rows.flatMap((row) => pointsNowhere(row).map((wrong) => `${row.split('|')[1]!.trim()}: ${wrong}`))).toEqual(
      [],
    );
  });

  it('would be missed if it were not there', () => {
    expect(pointsNowhere('| 1 | a | access: "is open to somebody ..."; `libs/no-such-room` |')).toEqual([
      '"is open to somebody ..." in test/api/access.spec.ts',
      'libs/no-such-room',
    ]);
  });

  it('is told of each of the 47 cases once, and with where it is tested or why not', () => {
    const cells = rowsOf(security).map((row) => row.split(/(?<!\\)\|/).map((cell) => cell.trim()));
    const numbers = cells.flatMap(([, number]) => number!.split(', ').map(Number));
    expect(numbers).toEqual(Array.from({ length: 47 }, (_, n) => n + 1));
    for (const [, , , where] of cells) expect(where).toMatch(/"|`|the same|does not apply: /);
  });

  it('leaves no requirement that nobody has looked at', () => {
    expect(rowsOf(asvs).filter((row) => row.includes('not looked at'))).toEqual([]);
  });
});
