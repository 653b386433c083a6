import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { day, formatDay } from '../../../libs/day';
import { demoRulebookFile, makeDemoShop } from '../../../libs/demo';
import {
  createJudge,
  endOfDayUtc,
  rulebookFromFile,
  writeRulebook,
  writeUnitFacts,
  type PartQuestion,
  type Rulebook,
} from '../../../libs/fit-rules';
import { Draw, stream } from '../../../libs/fit-rules/testing/random-book';
import { inferBuildDays, possibleKeys, prepareShop, readSerial, type Evidence } from '../../../libs/build-date';
import { runCli } from './testing/run-cli';

const folder = mkdtempSync(join(tmpdir(), 'revright-verdicts-'));
afterAll(() => rmSync(folder, { recursive: true }));

function writeBook(book: object): string {
  const path = join(folder, 'rulebook.json');
  writeFileSync(path, JSON.stringify(book));
  return path;
}

const verdictsIn = (jsonLines: string): string[] =>
  jsonLines
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => (JSON.parse(line) as { verdict: string }).verdict);

/** A random rulebook of things that a file can hold. */
function drawn(draw: Draw): Rulebook {
  const { rules, sources, ...rest } = draw.rulebook();
  const saying = rules.filter(
    (one) => one.required !== null || one.allowed.length + one.barred.length + one.replaces.length > 0,
  );
  return { ...rest, rules: saying, sources: sources.map((source) => ({ ...source, title: 'a paper' })) };
}

const rowOf = ({ unit, position, parts, fittedOn }: PartQuestion): string =>
  JSON.stringify({
    facts: writeUnitFacts(unit),
    position,
    parts,
    fittedOn: fittedOn === null ? null : formatDay(fittedOn),
  });

describe('the command line and the library', () => {
  it('give the same verdicts for random rulebooks and random installs, with reasons and without', async () => {
    const seen = new Set<string>();
    for (let seed = 1; seed <= 150; seed++) {
      const draw = new Draw(stream(seed));
      const book = drawn(draw);
      const [today, now] = [draw.below(24), draw.below(6)];
      const questions = Array.from({ length: 40 }, () => draw.question());
      const judge = createJudge(book, { today, now });
      const expected = questions.map((question) => judge.judge(question).verdict);
      const path = writeBook({ format: 'revright-rulebook', version: 1, ...writeRulebook(book) });
      const clock = ['--in-force-on', formatDay(today), '--known-at', new Date(now).toISOString()];
      for (const reasons of ['none', 'all']) {
        const args = ['judge', path, '-', '--format', 'json', '--reasons', reasons, ...clock];
        const { code, out, err } = await runCli(args, questions.map(rowOf).join('\n'));
        if (code !== 0) throw new Error(`seed ${seed}: ${err}`);
        expect({ seed, reasons, verdicts: verdictsIn(out) }).toEqual({ seed, reasons, verdicts: expected });
      }
      for (const verdict of expected) seen.add(verdict);
    }
    expect(seen.size).toBe(6);
  }, 120_000);

  it('give the same verdicts for a table of the invented shop, build dates and serials worked out from the plates', async () => {
    const today = day('2026-11-25');
    const shop = makeDemoShop(3, today);
    const path = writeBook(demoRulebookFile(shop));
    const plates = prepareShop({ serialSchemes: [...shop.schemes], standardEditions: [...shop.editions] });
    const { out: table } = await runCli(['example', 'installs', '--seed', '3', '--today', '2026-11-25']);
    const { code, out } = await runCli(
      ['judge', path, '-', '--format', 'json', '--reasons', 'none', '--today', '2026-11-25'],
      table,
    );
    expect(code).toBe(0);
    const { rules, sources, supersessions, standing } = demoRulebookFile(shop);
    const judge = createJudge(rulebookFromFile({ rules, sources, supersessions, standing }), {
      today,
      now: endOfDayUtc(today),
    });
    const lines = new Map(shop.lines.map((line) => [line.code, line]));
    const expected = shop.tickets.flatMap(({ unit, records }) => {
      const { line: code, model, serial, options } = shop.units[unit]!;
      const { maker, producedFrom, producedUntil } = lines.get(code)!;
      const last = producedUntil === null ? null : formatDay(producedUntil - 1);
      const evidence: Evidence[] = [{ id: 'p', kind: 'production-span', first: formatDay(producedFrom), last }];
      if (serial !== null) evidence.push({ id: 's', kind: 'serial-scheme', maker, line: code, serial });
      const built = inferBuildDays(evidence, plates, today);
      const keys = serial === null ? [] : possibleKeys(readSerial(serial, { maker, line: code }, plates, today), built);
      const schemes = new Set(keys.map(({ scheme }) => scheme));
      const key = schemes.size === 1 ? { scheme: keys[0]!.scheme, key: keys.length === 1 ? keys[0]!.key : null } : null;
      return records
        .filter(({ part }) => part !== null)
        .map(({ position, part, fittedOn }) => {
          const facts = { line: code, model, options, serial: key, built };
          return judge.judge({ unit: facts, position, parts: [part!], fittedOn }).verdict;
        });
    });
    expect(verdictsIn(out)).toEqual(expected);
    expect(expected.length).toBeGreaterThan(10_000);
  }, 120_000);
});
