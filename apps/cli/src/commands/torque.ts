import { Option, type Command } from 'commander';
import {
  compareFasteners,
  severityOf,
  signalWordOf,
  type BreakClass,
  type FastenerComparison,
  type FastenerSpecInput,
  type ShearJointInput,
} from '../../../../libs/fastener';
import { writeAnswer } from '../files/output';
import { readBook, type Book } from '../files/read-book';
import { readJson } from '../files/read-json';
import { csvHeading, csvText } from '../files/write-rows';
import { ANSWER_IS_NO, FINE, Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { PartReader } from '../units/read-part';
import { listOf } from './list-of';

const CLASSES: readonly BreakClass[] = ['breaks-sooner', 'as-required', 'breaks-later', 'cannot-tell'];

const HELP = `
Fitted and required are parts of the rulebook that have fastener data, or JSON files that describe a fastener; the
joint is that of a position, or a JSON file. See docs/formats.md for both. Lengths are in millimetres, torque in N·m.
The figures say how far off a part is. They never recommend one: the rule decides.

Examples:
  $ revright torque rulebook.json --line DRIFTBREAK --position AUG-PIN --fitted 30-1150 --required 30-1127B
  $ revright torque rulebook.json --line DRIFTBREAK --position AUG-PIN --fitted found.json --required 30-1127B
  $ revright torque rulebook.json --joint joint.json --fitted found.json --required asked.json --fail-on breaks-later`;

interface TorqueOptions {
  readonly fitted: string;
  readonly required: string;
  readonly line?: string;
  readonly position?: string;
  readonly joint?: string;
  readonly format: 'text' | 'csv' | 'json';
  readonly out?: string;
  readonly failOn?: readonly BreakClass[];
}

/** `torque`: two fasteners and a joint in, how far apart they let go out. */
export function torqueCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  program
    .command('torque <rulebook>')
    .summary('compare two shear fasteners')
    .description('Compares the torque at which a fitted shear fastener lets go with that of the required one.')
    .requiredOption('--fitted <part>', 'part that is fitted: a number, MAKER/NUMBER or a JSON file')
    .requiredOption('--required <part>', 'part that is required: likewise')
    .option('--line <code>', 'product line')
    .option('--position <code>', 'position whose joint the fastener sits in')
    .option('--joint <file>', 'JSON file that describes the joint instead')
    .addOption(new Option('--format <format>', 'form of the answer').choices(['text', 'csv', 'json']).default('text'))
    .option('--out <file>', 'write here instead of stdout')
    .option('--fail-on <classes>', `exit with 1 if the answer is one of these: ${CLASSES.join(', ')}`, listOf(CLASSES))
    .addHelpText('after', HELP)
    .action(async (rulebook: string, options: TorqueOptions) => end(await torque(rulebook, options, around)));
}

async function torque(path: string, options: TorqueOptions, around: Surroundings): Promise<number> {
  const book = await readBook(path, around);
  const joint = await jointOf(options, book, around);
  const [fitted, required] = [
    await fastenerOf('fitted', options, book, around),
    await fastenerOf('required', options, book, around),
  ];
  const compared = compareFasteners(fitted, required, joint);
  if (!compared.ok) throw new Refusal(compared.problems.map(({ sentence }) => sentence));
  await writeAnswer(options.out, around, FORMS[options.format](compared.value));
  return options.failOn?.includes(compared.value.class) ? ANSWER_IS_NO : FINE;
}

async function jointOf({ joint, line, position }: TorqueOptions, book: Book, around: Surroundings) {
  // Checked by the comparison itself, which names every field that is wrong.
  if (joint !== undefined) return (await readJson(joint, around)).value as ShearJointInput;
  if (line === undefined || position === undefined) throw new Refusal('give --line and --position, or --joint.');
  const known = book.lines.get(line);
  if (!known) throw new Refusal(`--line: "${line}" is no product line of this rulebook.`);
  const found = known.positions.get(position);
  if (!found) throw new Refusal(`--position: "${position}" is no position of ${line}.`);
  if (found.joint !== null) return found.joint;
  const others = known.entry.positions.filter((one) => one.joint !== null).map(({ code }) => code);
  throw new Refusal(
    `--position: ${position} of ${line} has no shear joint; these have: ${others.join(', ') || 'none'}.`,
  );
}

async function fastenerOf(
  side: 'fitted' | 'required',
  options: TorqueOptions,
  book: Book,
  around: Surroundings,
): Promise<FastenerSpecInput> {
  const text = options[side];
  if (text.toLowerCase().endsWith('.json')) return (await readJson(text, around)).value as FastenerSpecInput;
  const reading = new PartReader(book).read(text, options.line ?? '');
  if (!reading.ok) throw new Refusal(`--${side}: ${reading.sentence}`);
  const part = book.parts.get(reading.key);
  if (!part) throw new Refusal(`--${side}: "${text}" is no part of this rulebook.`);
  if (part.fastener === null)
    throw new Refusal(`--${side}: ${part.number} (${part.name}) has no fastener data in this rulebook.`);
  return part.fastener;
}

const FORMS: Readonly<Record<TorqueOptions['format'], (comparison: FastenerComparison) => string>> = {
  text: (comparison) => {
    const signal = signalWordOf(severityOf(comparison));
    const [answer, ...rest] = comparison.sentences;
    return [signal === null ? answer : `${signal}: ${answer}`, ...rest, comparison.caution].join('\n');
  },
  csv: (comparison) => {
    const { ratio, fitted, required, againstRated } = comparison;
    const row = {
      class: comparison.class,
      severity: severityOf(comparison),
      ratio_low: ratio.low,
      ratio_high: ratio.high,
      fitted_low_nm: fitted.torqueNm.low,
      fitted_high_nm: fitted.torqueNm.high,
      required_low_nm: required.torqueNm.low,
      required_high_nm: required.torqueNm.high,
      rated_nm: againstRated?.ratedTorqueNm,
      exceeds_rated: againstRated?.exceeds,
    };
    return csvHeading(Object.keys(row)) + csvText(Object.keys(row), [row]);
  },
  json: (comparison) => JSON.stringify({ ...comparison, severity: severityOf(comparison) }, null, 2),
};
