import type { Command } from 'commander';
import { readJson } from '../files/read-json';
import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { collect } from './list-of';

/** What was read off a unit, as options give it. */
export interface PlateOptions {
  readonly printed?: readonly string[];
  readonly standard?: readonly string[];
  readonly engineFamily?: readonly string[];
  readonly vin?: readonly string[];
  readonly tyre?: readonly string[];
  readonly stamp?: readonly string[];
  readonly receipt?: readonly string[];
  readonly firstSeen?: readonly string[];
  readonly evidence?: string;
}

/** Adds an option for every kind of mark that tells a build date; each may be given more than once. */
export function withPlate(command: Command): Command {
  return command
    .option('--printed <date>', 'build date printed on the plate: 2017, 2017-03, 2017-W09 or 2017-03-14', collect)
    .option('--standard <name>', 'standard and edition named on the plate, such as "ANSI B71.3-2005"', collect)
    .option('--engine-family <code>', "the engine's emission family, 12 characters", collect)
    .option('--vin <number>', 'vehicle number of a towed machine, 17 characters', collect)
    .option('--tyre <code>', 'week and year at the end of a tyre code, such as 1417', collect)
    .option('--stamp <part=date>', 'date stamped on a part, such as "gear case=2016-05"', collect)
    .option('--receipt <date>', 'day of sale or registration', collect)
    .option('--first-seen <day>', 'day the shop first saw the unit', collect)
    .option('--evidence <file>', 'a JSON list of evidence; see docs/formats.md');
}

/** The evidence of the options as pieces still to be checked, named by what they are: `printed-date`, `receipt 2`. */
export async function evidenceOfOptions(options: PlateOptions, around: Surroundings): Promise<readonly object[]> {
  const {
    printed = [],
    standard = [],
    engineFamily = [],
    vin = [],
    tyre = [],
    stamp = [],
    receipt = [],
    firstSeen = [],
  } = options;
  const pieces: { kind: string; [field: string]: unknown }[] = [
    ...printed.map((date) => ({ kind: 'printed-date', date })),
    ...standard.map(standardOf),
    ...engineFamily.map((family) => ({ kind: 'engine-family', family })),
    ...vin.map((number) => ({ kind: 'vin', vin: number, vehicle: 'other' })),
    ...tyre.map((code) => ({ kind: 'tyre-code', code })),
    ...stamp.map(stampOf),
    ...receipt.map((date) => ({ kind: 'receipt', date })),
    ...firstSeen.map((on) => ({ kind: 'first-seen', on })),
  ];
  const given = options.evidence === undefined ? [] : await evidenceOfFile(options.evidence, around);
  return [...numbered(pieces), ...given];
}

/** `ANSI B71.3-2005`: the last four digits after a dash, colon or blank are the edition. */
function standardOf(text: string): { kind: string; standard: string; edition: string } {
  const match = /^(.+?)[\s:\-\u2013]+(\d{4})$/.exec(text.trim());
  if (!match)
    throw new Refusal(
      `--standard: "${text}" names no edition: write the standard and its year, such as "ANSI B71.3-2005".`,
    );
  return { kind: 'standard-edition', standard: match[1]!, edition: match[2]! };
}

function stampOf(text: string): { kind: string; part: string; date: string } {
  const at = text.lastIndexOf('=');
  if (at <= 0) throw new Refusal(`--stamp: "${text}" will not do: write part=date, such as "gear case=2016-05".`);
  return { kind: 'part-stamp', part: text.slice(0, at).trim(), date: text.slice(at + 1).trim() };
}

async function evidenceOfFile(path: string, around: Surroundings): Promise<readonly object[]> {
  const { name, value } = await readJson(path, around);
  if (Array.isArray(value) && value.every((one) => typeof one === 'object' && one !== null)) return value as object[];
  throw new Refusal(`${name}: this is no list of evidence; see docs/formats.md.`);
}

function numbered(pieces: readonly { kind: string }[]): object[] {
  return pieces.map((piece, i) => {
    const before = pieces.slice(0, i).filter(({ kind }) => kind === piece.kind).length;
    return { id: before === 0 ? piece.kind : `${piece.kind} ${before + 1}`, ...piece };
  });
}
