import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { configTable, repoRoot } from '../../libs/config';
import { columnsGuide } from '../../libs/sheets';

const text = (file: string): string => readFileSync(join(repoRoot(), file), 'utf8');
/** Tables are aligned by the formatter: only their cells count. */
const cells = (table: string): string[] =>
  table
    .split('\n')
    .filter((row) => row.startsWith('|') && !/^\|[\s|:-]+$/.test(row))
    .map((row) => row.replace(/\s+/g, ' ').trim());

const GUIDES = ['README.md', 'DEVELOPERS.md', ...readdirSync(join(repoRoot(), 'docs')).flatMap(guideOf)];

function guideOf(name: string): string[] {
  return name.endsWith('.md') ? [`docs/${name}`] : [];
}

/** Every address of the API as its controllers say it, such as `/api/owners/:id`. */
function addresses(): ReadonlySet<string> {
  const all = new Set<string>();
  for (const file of readdirSync(join(repoRoot(), 'apps/api/src'), { recursive: true }) as string[]) {
    if (!file.endsWith('.controller.ts')) continue;
    const source = text(join('apps/api/src', file));
    const under = /@Controller\((?:'([^']*)')?\)/.exec(source)?.[1] ?? '';
    for (const [, path = ''] of source.matchAll(/@(?:Get|Post|Put|Patch|Delete|Sse)\((?:'([^']*)')?/g))
      all.add(['/api', under, path].filter(Boolean).join('/'));
  }
  return all;
}

describe('the guides', () => {
  it('the README tells every variable of the environment as the program reads it', () => {
    const told = text('README.md').split('<!-- environment: begin -->')[1]!.split('<!-- environment: end -->')[0]!;
    expect(cells(told)).toEqual(cells(configTable()));
  });

  it('the picture of the house is the import law', () => {
    const tool = join(repoRoot(), 'apps/tools/house-picture.mjs');
    expect(execFileSync(process.execPath, [tool, '--check'], { encoding: 'utf8' })).toContain('flowchart');
  });

  it('the guide to spreadsheets tells every column of every kind as the program reads it', () => {
    const told = text('docs/spreadsheets.md').split('<!-- columns: begin -->')[1]!.split('<!-- columns: end -->')[0]!;
    expect(cells(told)).toEqual(cells(columnsGuide()));
  });

  it('the README names every command that stays, and each is there', () => {
    const { scripts } = JSON.parse(text('package.json')) as { scripts: Record<string, string> };
    for (const name of ['start', 'test', 'worker', 'bench', 'faults', 'screens', 'lint', 'types', 'imports']) {
      expect(scripts).toHaveProperty(name);
      expect(text('README.md')).toContain(name === 'start' || name === 'test' ? `npm ${name}` : `npm run ${name}`);
    }
  });

  it.each(GUIDES)('%s links only to what exists', (guide) => {
    const links = [...text(guide).matchAll(/\]\((?!https?:)([^)#]+)[^)]*\)/g)].map((match) => match[1]!);
    const missing = links.filter((link) => !existsSync(join(repoRoot(), dirname(guide), link)));
    expect(missing).toEqual([]);
  });

  it('name no address of the API that it does not have', () => {
    const known = addresses();
    const told = GUIDES.flatMap((guide) =>
      [...text(guide).matchAll(/`(?:[A-Z]+ )?(\/api\/[\w/:.-]+)`/g)].map(([, path]) => path!),
    );
    expect(told.length).toBeGreaterThan(5);
    expect(told.filter((path) => !known.has(path))).toEqual([]);
  });
});
