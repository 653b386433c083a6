import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROOT = join(__dirname, '..', '..', '..');
const MAIN = join(ROOT, 'dist', 'apps', 'cli', 'src', 'main.js');
const BOOK = join(ROOT, 'docs', 'examples', 'rulebook.json');
const ROWS = 1_000_000;
const MEGABYTE = 1_024;

const folder = mkdtempSync(join(tmpdir(), 'revright-memory-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Most are right; one row in twenty gets its reasons worked out, which takes much longer than the verdict. */
const PARTS = [...Array<string>(19).fill('30-1127/P10'), '30-1150'];

/** A heading and so many rows, a thousand at a time; every row another unit, so that nothing can be remembered. */
function* table(rows: number): Generator<string> {
  yield 'unit,line,model,serial,position,part,fitted_on,note\n';
  for (let at = 0; at < rows; at += 1_000) {
    let text = '';
    for (let i = at; i < Math.min(rows, at + 1_000); i++) {
      const serial = `1${7 + (i % 3)}C${String(i % 100_000).padStart(5, '0')}`;
      text += `unit ${i},DRIFTBREAK,DB-28,${serial},AUG-PIN,${PARTS[i % PARTS.length]},2020-01-${10 + (i % 20)},note of row ${i}\n`;
    }
    yield text;
  }
}

/** Judges so many rows in a process of its own; gives the lines it answered and its peak memory in KB. */
async function judged(rows: number): Promise<{ lines: number; peak: number }> {
  const peakFile = join(folder, `peak-${rows}`);
  // A heap that all rows would not fit in: without a limit a busy machine lets it grow before it is tidied.
  const args = [
    '--max-old-space-size=96',
    '--require',
    join(__dirname, 'testing', 'report-peak.cjs'),
    MAIN,
    'judge',
    BOOK,
    '-',
    '--quiet',
  ];
  const child = spawn(process.execPath, args, {
    env: { ...process.env, NODE_OPTIONS: '', REVRIGHT_PEAK_FILE: peakFile },
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let lines = 0;
  child.stdout.on('data', (piece: Buffer) => {
    for (let at = piece.indexOf(10); at !== -1; at = piece.indexOf(10, at + 1)) lines++;
  });
  const ended = once(child, 'close') as Promise<[number]>;
  for (const text of table(rows)) if (!child.stdin.write(text)) await once(child.stdin, 'drain');
  child.stdin.end();
  const [code] = await ended;
  expect(code).toBe(0);
  return { lines, peak: Number(readFileSync(peakFile, 'utf8')) };
}

describe('judging a table of a million rows', () => {
  it('answers every row and needs hardly more memory than a small table does', async () => {
    if (!existsSync(MAIN)) throw new Error('The command line is not built; run "npm run build" first.');
    const small = await judged(20_000);
    const large = await judged(ROWS);
    expect([small.lines, large.lines]).toEqual([20_001, ROWS + 1]);
    // All rows held at once would take some 500 MB.
    expect(large.peak).toBeLessThan(300 * MEGABYTE);
    expect(large.peak - small.peak).toBeLessThan(120 * MEGABYTE);
  }, 600_000);
});
