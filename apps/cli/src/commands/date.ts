import { Option, type Command } from 'commander';
import {
  cutAt,
  EVIDENCE_KINDS,
  inferBuildDates,
  whatWouldSettle,
  writeAnswer as writtenAnswer,
  type BuildDateAnswer,
  type Evidence,
  type Settling,
  evidenceOfUnit,
  serialOfUnit,
} from '../../../../libs/build-date';
import { formatDay } from '../../../../libs/day';
import { createJudge } from '../../../../libs/fit-rules';
import { writeAnswer } from '../files/output';
import { readBook, type Book } from '../files/read-book';
import { csvHeading, csvText } from '../files/write-rows';
import { ANSWER_IS_NO, FINE, Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { Problems } from '../units/problem';
import { readEvidence, readLine } from '../units/read-unit';
import { clockOf, withClock, type Clock, type ClockOptions } from './clock';
import { evidenceOfOptions, withPlate, type PlateOptions } from './plate-options';
import { refusalOf } from './unit-options';

const HELP = `
Exits with 1 when no day fits all the evidence, and names the smallest groups of pieces that cannot all be true.
With --line it also says whether the date matters for any position of the line, and what to read next.

Examples:
  $ revright date rulebook.json --line DRIFTBREAK --serial 17C00412
  $ revright date rulebook.json --maker BRAKEN --serial 60500412 --standard "ANSI B71.3-2014"
  $ revright date rulebook.json --line DRIFTBREAK --serial 17C00412 --receipt 2016-11-02
  $ revright date rulebook.json --line DRIFTBREAK --tyre 1417 --stamp "gear case=2017-02" --format json`;

interface DateOptions extends PlateOptions, ClockOptions {
  readonly line?: string;
  readonly maker?: string;
  readonly serial?: string;
  readonly format: 'text' | 'csv' | 'json';
  readonly out?: string;
}

/** `date`: what was read off a plate in, the possible build dates out, with conflicts and what to look at next. */
export function dateCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  const command = program
    .command('date <rulebook>')
    .summary('possible build dates by what a plate shows')
    .description(
      'Says when a unit can have been built, by everything read off it, and which pieces contradict each other.',
    )
    .option('--line <code>', 'product line: brings its maker and the days it was made')
    .option('--maker <code>', 'maker, where the line is not known')
    .option('--serial <number>', 'serial number as on the plate');
  withClock(withPlate(command))
    .addOption(new Option('--format <format>', 'form of the answer').choices(['text', 'csv', 'json']).default('text'))
    .option('--out <file>', 'write here instead of stdout')
    .addHelpText('after', HELP)
    .action(async (rulebook: string, options: DateOptions) => end(await date(rulebook, options, around)));
}

async function date(path: string, options: DateOptions, around: Surroundings): Promise<number> {
  const clock = clockOf(options);
  const book = await readBook(path, around);
  const evidence = await allEvidence(options, book, around);
  const answer = inferBuildDates(evidence, book.shop, clock.today);
  const settling = options.line === undefined ? null : settlingOf(options, book, clock, answer, evidence);
  await writeAnswer(options.out, around, FORMS[options.format](answer, settling));
  return answer.days.length === 0 ? ANSWER_IS_NO : FINE;
}

async function allEvidence(options: DateOptions, book: Book, around: Surroundings): Promise<readonly Evidence[]> {
  const problems = new Problems();
  const line = options.line === undefined ? null : readLine({ line: options.line }, book, problems);
  const read = readEvidence({ evidence: await evidenceOfOptions(options, around) }, problems);
  if (problems.all.length > 0) throw refusalOf(problems);
  const { serial = null, maker } = options;
  const entry = line?.known?.entry ?? null;
  if (entry !== null || serial === null) return evidenceOfUnit({ line: entry, serial }, read);
  if (maker === undefined)
    throw new Refusal('--serial: a serial is read as its maker writes it; give --line or --maker too.');
  if (!book.makers.has(maker))
    throw new Refusal(
      `--maker: "${maker}" is no maker of this rulebook; it has ${[...book.makers.keys()].join(', ')}.`,
    );
  return [{ id: 'serial', kind: 'serial-scheme', maker, serial }, ...read];
}

/** Whether the date matters for some position of the line, and which mark would be worth reading. */
function settlingOf(
  { line, serial }: DateOptions,
  book: Book,
  { today, inForceOn, knownAt }: Clock,
  { days }: BuildDateAnswer,
  evidence: readonly Evidence[],
): Settling | null {
  const known = book.lines.get(line!);
  if (!known || days.length === 0) return null;
  const { maker, positions } = known.entry;
  const key = serialOfUnit({ serial: serial ?? null, line: known.entry }, evidence, days, book.shop, today);
  const unit = { line: line!, model: null, options: {}, serial: key, built: days };
  const judge = createJudge(book.rulebook, { today: inForceOn, now: knownAt });
  const boundaries = positions.flatMap(({ code }) =>
    judge.ruling(unit, code).boundaries.flatMap((one) => (one.axis === 'built' ? [one.at] : [])),
  );
  const read = new Set(evidence.map(({ kind }) => kind));
  const missing = EVIDENCE_KINDS.filter(
    (kind) => !read.has(kind) && kind !== 'production-span' && kind !== 'first-seen',
  );
  return whatWouldSettle({ cuts: cutAt(days, boundaries), missing, maker, line: line!, shop: book.shop, today });
}

type Form = (answer: BuildDateAnswer, settling: Settling | null) => string;

const FORMS: Readonly<Record<DateOptions['format'], Form>> = {
  text: (answer, settling) => [...sayAnswer(answer), ...saySettling(settling)].join('\n'),
  csv: ({ days }) =>
    csvHeading(['built_from', 'built_to']) +
    csvText(
      ['from', 'to'],
      days.map(({ from, to }) => ({ from: formatDay(from), to: formatDay(to) })),
    ),
  json: (answer, settling) => JSON.stringify({ ...writtenAnswer(answer), settling }, null, 2),
};

function sayAnswer({ sentence, pieces, conflicts, misreadings, splits }: BuildDateAnswer): string[] {
  return [
    sentence,
    ...pieces.map(
      ({ id, setAside, sentence: words }) => `  ${id}${setAside ? ` (set aside: ${setAside.reason})` : ''}: ${words}`,
    ),
    ...conflicts.map((ids) => `Cannot all be true: ${ids.join(', ')}.`),
    ...misreadings.map((one) => `Look again: ${one.sentence}`),
    ...splits.map((split) => split.sentence),
  ];
}

function saySettling(settling: Settling | null): string[] {
  if (settling === null) return [];
  if (!settling.needed) return [settling.sentence];
  if (settling.kinds.length === 0) return [settling.sentence];
  return ['What to look at next:', ...settling.kinds.map(({ sentence }) => `  ${sentence}`)];
}
