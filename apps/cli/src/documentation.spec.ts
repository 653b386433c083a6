import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { rulebookJsonSchema } from '../../../libs/contracts';
import { runCli, wordsOf } from './testing/run-cli';

const ROOT = join(__dirname, '..', '..', '..');
const PAGES = ['docs/command-line.md', 'docs/formats.md'];
/** Set to write what the commands print now into the pages, instead of comparing; then read the change. */
const WRITE = process.env.REVRIGHT_WRITE_DOCS !== undefined;

const BLOCK = /```console\n([\s\S]*?)```/g;

/** Runs the commands of one block in order and gives the block as a terminal would show it. */
async function played(block: string): Promise<string> {
  const shown: string[] = [];
  let last = 0;
  for (const line of block.split('\n').filter((one) => one.startsWith('$ '))) {
    shown.push(`${line}\n`);
    const words = wordsOf(line.slice(2));
    if (words.join(' ') === 'echo $?') shown.push(`${last}\n`);
    else {
      expect(words.slice(0, 2)).toEqual(['npx', 'revright']);
      const { code, out, err } = await runCli(words.slice(2));
      shown.push(out, err);
      last = code;
    }
  }
  return shown.join('');
}

describe('the documentation', () => {
  const home = process.cwd();
  beforeAll(() => process.chdir(ROOT));
  afterAll(() => process.chdir(home));

  it.each(PAGES)('shows in %s exactly what the commands print', async (page) => {
    const text = readFileSync(page, 'utf8');
    const pieces: string[] = [];
    let at = 0;
    for (const match of text.matchAll(BLOCK)) {
      pieces.push(text.slice(at, match.index), `\`\`\`console\n${await played(match[1]!)}\`\`\``);
      at = match.index + match[0].length;
    }
    const now = pieces.join('') + text.slice(at);
    if (WRITE) writeFileSync(page, now);
    else expect(text).toBe(now);
  });

  it('carries the JSON Schema that the code publishes', () => {
    const text = `${JSON.stringify(rulebookJsonSchema(), null, 2)}\n`;
    if (WRITE) writeFileSync('docs/rulebook.schema.json', text);
    expect(readFileSync('docs/rulebook.schema.json', 'utf8')).toBe(text);
  });

  it('carries the example rulebook that the invented shop gives', async () => {
    const { out } = await runCli(['example', 'rulebook', '--only', 'DRIFTBREAK', '--today', '2026-11-25']);
    if (WRITE) writeFileSync('docs/examples/rulebook.json', out);
    expect(readFileSync('docs/examples/rulebook.json', 'utf8')).toBe(out);
  });
});
