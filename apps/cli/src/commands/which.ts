import { Option, type Command } from 'commander';
import { saySet } from '../../../../libs/day';
import { createJudge, sayRuling, type FullNaming, type Ruling } from '../../../../libs/fit-rules';
import { jsonDays, jsonRuling } from '../files/json-ruling';
import { writeAnswer } from '../files/output';
import { readBook, type Book } from '../files/read-book';
import { csvHeading, csvText } from '../files/write-rows';
import { ANSWER_IS_NO, FINE } from '../refusal';
import type { Surroundings } from '../surroundings';
import { Problems } from '../units/problem';
import { readPosition } from '../units/read-install';
import type { GivenUnit } from '../units/read-unit';
import { clockOf, sayClock, withClock, type Clock, type ClockOptions } from './clock';
import { collect } from './list-of';
import { refusalOf, unitOfValues, valuesOfOptions, withUnit, type UnitOptions } from './unit-options';

const HELP = `
Where the answer depends on the build date, the serial or an option, every piece is told, with what would settle it.

Examples:
  $ revright which rulebook.json --line DRIFTBREAK --position AUG-PIN --serial 17C00412
  $ revright which rulebook.json --line DRIFTBREAK --model DB-28 --built 2017-03 --option heavy-housing=no
  $ revright which rulebook.json --line DRIFTBREAK --position IMP-PIN --in-force-on 2019-06-01
  $ revright which rulebook.json --line DRIFTBREAK --built 2017-03 --format json --fail-unsettled`;

interface WhichOptions extends UnitOptions, ClockOptions {
  readonly position?: readonly string[];
  readonly format: 'text' | 'csv' | 'json';
  readonly out?: string;
  readonly failUnsettled?: boolean;
}

/** `which`: a unit and a position in, the ruling out. */
export function whichCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  const command = program
    .command('which <rulebook>')
    .summary('which part belongs where on one unit')
    .description('Says which part belongs in a position of one unit, by which paper, and what it depends on.')
    .option(
      '--position <code>',
      'position; may be given more than once (default: every position of the line)',
      collect,
    );
  withClock(withUnit(command))
    .addOption(new Option('--format <format>', 'form of the answer').choices(['text', 'csv', 'json']).default('text'))
    .option('--out <file>', 'write here instead of stdout')
    .option('--fail-unsettled', 'exit with 1 if a ruling is not settled')
    .addHelpText('after', HELP)
    .action(async (rulebook: string, options: WhichOptions) => end(await which(rulebook, options, around)));
}

async function which(path: string, options: WhichOptions, around: Surroundings): Promise<number> {
  const clock = clockOf(options);
  const book = await readBook(path, around);
  const unit = unitOfValues(await valuesOfOptions(options, around), book, clock.today);
  const judge = createJudge(book.rulebook, { today: clock.inForceOn, now: clock.knownAt });
  const rulings = positionsAsked(options, book).map((position) => judge.ruling(unit.facts(), position));
  await writeAnswer(options.out, around, FORMS[options.format](rulings, unit, book, clock));
  return options.failUnsettled && rulings.some(({ settled }) => !settled) ? ANSWER_IS_NO : FINE;
}

function positionsAsked({ line, position: asked }: WhichOptions, book: Book): readonly string[] {
  const problems = new Problems();
  if (asked === undefined) return [...(book.lines.get(line)?.positions.keys() ?? everyPosition(line, book))];
  const positions = asked.map((position) => readPosition({ position }, line, book, problems));
  if (problems.all.length > 0) throw refusalOf(problems);
  return positions.filter((one) => one !== null);
}

/** Of a rulebook that lists no lines: the positions its rules name. */
function everyPosition(line: string, { rulebook }: Book): ReadonlySet<string> {
  return new Set(rulebook.rules.filter((rule) => rule.line === line).flatMap(({ positions }) => positions));
}

type Form = (rulings: readonly Ruling[], unit: GivenUnit, book: Book, clock: Clock) => string;

const FORMS: Readonly<Record<WhichOptions['format'], Form>> = {
  text: (rulings, unit, book, clock) => {
    const naming = book.naming(unit.line);
    const model = unit.model === null ? 'model not known' : `model ${unit.model}`;
    const head = `${unit.line}, ${model}, built ${saySet(unit.built)}; ${sayClock(clock)}.`;
    return [head, ...rulings.flatMap((ruling) => ['', ...textOf(ruling, unit.line, naming)])].join('\n');
  },
  csv: (rulings, unit, book) => {
    const rows = rulings.flatMap((ruling) => pieceRows(ruling, book.naming(unit.line)));
    const columns = ['position', 'settled', 'built', 'outcome', 'required', 'allowed', 'barred', 'rule'];
    return csvHeading(columns) + csvText(columns, rows);
  },
  json: (rulings, unit, book) => {
    const { built, ...facts } = unit.facts();
    const naming = book.naming(unit.line);
    const answer = {
      unit: { ...facts, built: jsonDays(built) },
      rulings: rulings.map((one) => jsonRuling(one, naming)),
    };
    return JSON.stringify(answer, null, 2);
  },
};

function textOf(ruling: Ruling, line: string, naming: FullNaming): string[] {
  const name = naming.position(ruling.position, line);
  const title = name === ruling.position ? name : `${ruling.position}, ${name}`;
  return [title, ...sayRuling(ruling, naming).map((line) => `  ${line}`)];
}

function pieceRows(ruling: Ruling, naming: FullNaming): Record<string, unknown>[] {
  return ruling.pieces.map(({ where, outcome, grounds }) => {
    const saying = outcome.kind === 'decided' ? outcome.saying : null;
    return {
      position: ruling.position,
      settled: ruling.settled ? 'yes' : 'no',
      built: saySet(where.built),
      outcome: outcome.kind,
      required: saying?.required ? naming.part(saying.required) : null,
      allowed: saying?.allowed.map(naming.part).join('|'),
      barred: [...new Set(outcome.barred.map(({ part }) => naming.part(part)))].join('|'),
      rule: [...new Set(grounds.flatMap(({ deciding }) => deciding.map(({ key }) => key)))].join('|'),
    };
  });
}
