import * as fc from 'fast-check';
import { civilDateOf, dayOf, formatDay, isoWeekDateOf, type Day } from '../../day';
import type { Evidence } from '../evidence';
import { modelYearCharacter, modelYearWindow } from '../model-year';
import { tyreCodeOf } from '../tyre-rules';
import { vinCheckDigit } from '../vin-rules';
import { writeSerial } from '../write-serial';
import { MAKER, TODAY, shop } from './invented-shop';

/** Build days on which the invented maker built and for which every kind of evidence can exist. */
export const buildDay = fc.integer({ min: dayOf(1998, 1, 1), max: TODAY - 400 });

const earlier = (built: Day, most: number) => fc.nat(most).map((lag) => built - lag);
const later = (built: Day) => fc.nat(390).map((lag) => built + lag);

/** A date at any precision that holds the day. */
function roughly(value: Day): fc.Arbitrary<string> {
  const text = formatDay(value);
  const { year, week } = isoWeekDateOf(value);
  return fc.constantFrom(text, text.slice(0, 7), text.slice(0, 4), `${year}-W${String(week).padStart(2, '0')}`);
}

/** Model years something built on a day can have. */
function modelYears(built: Day): number[] {
  const { year } = civilDateOf(built);
  return [year, year + 1].filter((one) => modelYearWindow(one).from <= built && built < modelYearWindow(one).to);
}

/** A well-formed vehicle number of a model year; `seventh` is its position 7. */
export function vinOf(modelYear: number, seventh: string): string {
  const tail = `${modelYearCharacter(modelYear)}K004711`;
  const head = `1HTTRL${seventh}A`;
  return `${head}${vinCheckDigit(`${head}0${tail}`)}${tail}`;
}

/** Evidence but for its id. */
type Piece = Evidence extends infer Kind ? (Kind extends Evidence ? Omit<Kind, 'id'> : never) : never;

function trueMarks(built: Day): fc.Arbitrary<Piece>[] {
  const inUse = shop.schemes(MAKER).filter(({ valid }) => valid.from <= built && built < valid.to);
  const engineMade = earlier(built, 900).map((made) => Math.max(made, dayOf(1997, 1, 1)));
  return [
    fc.tuple(fc.constantFrom(...inUse), fc.nat(999)).map(([{ scheme }, sequence]): Piece => {
      return { kind: 'serial-scheme', maker: MAKER, serial: writeSerial(scheme, built, { sequence }) };
    }),
    fc
      .tuple(engineMade, fc.constantFrom('small-spark-ignition' as const, 'other' as const))
      .map(([made, engine]): Piece => {
        return { kind: 'engine-family', family: `${modelYearCharacter(modelYears(made)[0]!)}HGXS.2080AA`, engine };
      }),
    fc
      .tuple(fc.constantFrom(...modelYears(built)), fc.constantFrom('light' as const, 'other' as const))
      .map(([year, vehicle]): Piece => {
        return { kind: 'vin', vin: vinOf(year, year >= 2010 ? 'L' : '4'), vehicle, checkDigit: 'required' };
      }),
    earlier(built, 3_000).map((made): Piece => ({ kind: 'tyre-code', code: tyreCodeOf(made) })),
    ...shop.editions
      .filter(({ floor }) => floor <= built)
      .map(({ edition: { standard, edition } }) => fc.constant<Piece>({ kind: 'standard-edition', standard, edition })),
  ];
}

function truePapers(built: Day): fc.Arbitrary<Piece>[] {
  const stamped = earlier(built, 900).chain(roughly);
  const first = earlier(built, 2_000).chain(roughly);
  const last = fc.oneof(fc.constant(null), later(built).chain(roughly));
  return [
    roughly(built).map((date): Piece => ({ kind: 'printed-date', date })),
    stamped.map((date): Piece => ({ kind: 'part-stamp', part: 'gear case', date })),
    fc.record({ kind: fc.constant('production-span' as const), first, last }),
    later(built)
      .chain(roughly)
      .map((date): Piece => ({ kind: 'receipt', date })),
    later(built).map((seen): Piece => ({ kind: 'first-seen', on: formatDay(seen) })),
  ];
}

/** One true piece of evidence of a unit built on the day, of any kind, as it could be found. */
export function trueEvidence(built: Day): fc.Arbitrary<Piece> {
  return fc.oneof(...trueMarks(built), ...truePapers(built));
}

const numbered = (pieces: Piece[]): Evidence[] => pieces.map((piece, at) => ({ ...piece, id: `piece-${at}` }));

/** Up to eight true pieces of one build day, with ids of their own. */
export function trueEvidenceList(built: Day): fc.Arbitrary<Evidence[]> {
  return fc.array(trueEvidence(built), { maxLength: 8 }).map(numbered);
}

/** Pieces that need not agree: each is true of a build day of its own. */
export const anyEvidenceList = fc.array(buildDay.chain(trueEvidence), { maxLength: 8 }).map(numbered);
