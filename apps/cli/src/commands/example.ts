import { Argument, type Command } from 'commander';
import { formatDay } from '../../../../libs/day';
import { demoRulebookFile, makeDemoShop, type DemoShop } from '../../../../libs/demo';
import { writeAnswer } from '../files/output';
import { csvHeading, csvText, type OutRow } from '../files/write-rows';
import { FINE, Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { clockOf } from './clock';

const COLUMNS = ['ticket', 'line', 'model', 'serial', 'options', 'position', 'place', 'part', 'fitted_on'];

const HELP = `
Every maker, part and person in it is invented. The same seed and day always give the same files.

Examples:
  $ revright example rulebook --out rulebook.json
  $ revright example installs --out installs.csv
  $ revright example rulebook --only DRIFTBREAK --today 2026-11-25`;

interface ExampleOptions {
  readonly seed: string;
  readonly today?: string;
  readonly only?: string;
  readonly out?: string;
}

/** `example`: a rulebook, or what units were found to hold, from an invented shop. */
export function exampleCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  program
    .command('example')
    .summary('write files of an invented shop to try things on')
    .description('Writes a rulebook or a table of installed parts of an invented shop.')
    .addArgument(new Argument('<what>', 'rulebook (JSON) or installs (CSV)').choices(['rulebook', 'installs']))
    .option('--seed <number>', 'another seed gives another shop', '1')
    .option('--today <day>', "the day the shop stands at (default: this computer's date)")
    .option('--only <line>', 'this product line only')
    .option('--out <file>', 'write here instead of stdout')
    .addHelpText('after', HELP)
    .action(async (what: 'rulebook' | 'installs', options: ExampleOptions) => {
      const shop = shopOf(options);
      await writeAnswer(
        options.out,
        around,
        what === 'rulebook' ? rulebookText(shop, options) : installsText(shop, options),
      );
      end(FINE);
    });
}

function shopOf({ seed, today, only }: ExampleOptions): DemoShop {
  if (!/^\d{1,9}$/.test(seed)) throw new Refusal(`--seed: "${seed}" will not do: a whole number, such as 1.`);
  const shop = makeDemoShop(Number(seed), clockOf(today === undefined ? {} : { today }).today);
  const codes = shop.lines.map(({ code }) => code);
  if (only !== undefined && !codes.includes(only))
    throw new Refusal(`--only: "${only}" is no line of the shop; it has ${codes.join(', ')}.`);
  return shop;
}

function rulebookText(shop: DemoShop, { only }: ExampleOptions): string {
  const file = demoRulebookFile(shop);
  if (only === undefined) return JSON.stringify(file, null, 2);
  const lines = file.lines.filter(({ code }) => code === only);
  const rules = file.rules.filter(({ line }) => line === only);
  const papers = new Set(rules.map(({ source }) => source));
  const makers = new Set(lines.map(({ maker }) => maker));
  const parts = new Set(
    rules.flatMap(({ required, allowed, barred }) => [required, ...allowed, ...barred.map((one) => one.part)]),
  );
  const small = {
    ...file,
    makers: file.makers.filter(({ code }) => makers.has(code)),
    serialSchemes: file.serialSchemes.filter(({ maker }) => makers.has(maker)),
    lines,
    parts: file.parts.filter(({ key }) => parts.has(key)),
    sources: file.sources.filter(({ key }) => papers.has(key)),
    rules,
    supersessions: file.supersessions.filter(({ from, to }) => parts.has(from) || (to !== null && parts.has(to))),
  };
  return JSON.stringify(small, null, 2);
}

/** What the tickets of the shop found and left, with what the bench knew of each unit. */
function installsText({ tickets, units, parts }: DemoShop, { only }: ExampleOptions): string {
  const numbers = new Map(parts.map(({ key, number }) => [key, number]));
  const rows = tickets.flatMap(({ number, unit, records }): OutRow[] => {
    const { line, model, serial, options } = units[unit]!;
    if (only !== undefined && line !== only) return [];
    const fitted = Object.entries(options).map(([code, yes]) => `${code}=${yes ? 'yes' : 'no'}`);
    return records
      .filter(({ part }) => part !== null)
      .map(({ position, place, part, partText, fittedOn }) => ({
        ...{ ticket: number, line, model, serial, options: fitted.join('|'), position, place },
        part: partText ?? numbers.get(part!) ?? part,
        fitted_on: fittedOn === null ? null : formatDay(fittedOn),
      }));
  });
  return csvHeading(COLUMNS) + csvText(COLUMNS, rows);
}
