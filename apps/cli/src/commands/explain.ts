import { Option, type Command } from 'commander';
import {
  createJudge,
  explain,
  recordQuestion,
  replay,
  sayVerdict,
  verdictRecord,
  verdicts,
  type Judgement,
  type Rulebook,
  type Verdict,
  type VerdictRecord,
} from '../../../../libs/fit-rules';
import { jsonJudgement } from '../files/json-ruling';
import { writeAnswer } from '../files/output';
import { readBook, type Book } from '../files/read-book';
import { readJson } from '../files/read-json';
import { ANSWER_IS_NO, FINE, Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { Problems } from '../units/problem';
import { questionOf, readInstall } from '../units/read-install';
import { PartReader } from '../units/read-part';
import { clockOf, withClock, type ClockOptions } from './clock';
import { listOf } from './list-of';
import { refusalOf, valuesOfOptions, withUnit, type UnitOptions } from './unit-options';
import { readShape, sayAt } from '../../../../libs/shape';

const HELP = `
The chain: the question, the verdict, the ruling, how the rules were weighed, what the papers of the fitting day said,
what the shop knew then, and every rule that was looked at. With --format json the answer holds a record of all the
verdict rests on; --replay judges such a record again, with the rulebook of the day it was made.

Examples:
  $ revright explain rulebook.json --line DRIFTBREAK --position AUG-PIN --part 30-1150 --built 2017-03
  $ revright explain rulebook.json --line DRIFTBREAK --position AUG-PIN --part 30-1120 --serial 17C00412 --fitted-on 2018-01-20
  $ revright explain rulebook.json --line DRIFTBREAK --position AUG-PIN --part 30-1120 --built 2017 --format json --out why.json
  $ revright explain rulebook.json --replay why.json`;

interface ExplainOptions extends UnitOptions, ClockOptions {
  readonly position?: string;
  readonly part?: string;
  readonly fittedOn?: string;
  readonly replay?: string;
  readonly format: 'text' | 'json';
  readonly out?: string;
  readonly failOn?: readonly Verdict[];
}

/** `explain`: one verdict with the full chain behind it, in words or as JSON. */
export function explainCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  const command = program
    .command('explain <rulebook>')
    .summary('why one part in one place got its verdict')
    .description('Explains one verdict: the full chain from the question to every rule that was looked at.')
    .option('--position <code>', 'position')
    .option('--part <number>', 'as printed, or MAKER/NUMBER; several that it can be joined by |')
    .option('--fitted-on <day>', 'day it was fitted; left out: it came with the unit')
    .option('--replay <file>', 'judge a recorded question again instead (a record, or a JSON answer that holds one)');
  withClock(withUnit(command));
  command.options.find(({ long }) => long === '--line')!.makeOptionMandatory(false);
  command
    .addOption(new Option('--format <format>', 'form of the answer').choices(['text', 'json']).default('text'))
    .option('--out <file>', 'write here instead of stdout')
    .option(
      '--fail-on <verdicts>',
      `exit with 1 if the verdict is one of these: ${verdicts.join(', ')}`,
      listOf(verdicts),
    )
    .addHelpText('after', HELP)
    .action(async (rulebook: string, options: ExplainOptions) => end(await explained(rulebook, options, around)));
}

interface Case {
  readonly judgement: Judgement;
  readonly rulebook: Rulebook;
  readonly record: VerdictRecord;
}

async function explained(path: string, options: ExplainOptions, around: Surroundings): Promise<number> {
  const book = await readBook(path, around);
  const one = options.replay === undefined ? await ask(book, options, around) : await replayed(options.replay, around);
  await writeAnswer(options.out, around, options.format === 'json' ? asJson(one, book) : asText(one, book));
  return options.failOn?.includes(one.judgement.verdict) ? ANSWER_IS_NO : FINE;
}

async function ask(book: Book, options: ExplainOptions, around: Surroundings): Promise<Case> {
  const { today, inForceOn, knownAt } = clockOf(options);
  const { position, part, fittedOn: fitted_on } = options;
  const values = { ...(await valuesOfOptions(options, around)), position, part, fitted_on };
  const problems = new Problems();
  const install = readInstall(values, { book, parts: new PartReader(book), today }, problems);
  if (install === null) throw refusalOf(problems);
  const question = questionOf(install);
  const { rulebook } = book;
  const judge = createJudge(rulebook, { today: inForceOn, now: knownAt });
  const record = recordQuestion(rulebook, question, { today: inForceOn, now: knownAt });
  return { judgement: judge.judge(question), rulebook, record };
}

async function replayed(path: string, around: Surroundings): Promise<Case> {
  const { name, value } = await readJson(path, around);
  const held = (value as { record?: unknown } | null)?.record ?? value;
  const read = readShape(verdictRecord, held);
  if (!read.ok) throw new Refusal(`${name}: this is no record of a verdict: ${sayAt(read.problems[0])}`);
  return { ...replay(read.value), record: read.value };
}

function asText({ judgement, rulebook }: Case, book: Book): string {
  return explain(judgement, rulebook, book.naming(judgement.question.unit.line)).join('\n');
}

function asJson({ judgement, rulebook, record }: Case, book: Book): string {
  const naming = book.naming(judgement.question.unit.line);
  const { technician, owner } = sayVerdict(judgement, naming);
  const answer = {
    verdict: judgement.verdict,
    technician,
    owner,
    chain: explain(judgement, rulebook, naming),
    judgement: jsonJudgement(judgement, naming),
    record,
  };
  return JSON.stringify(answer, null, 2);
}
