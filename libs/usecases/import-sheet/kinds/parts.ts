import { fastenerSpecSchema, type FastenerSpec } from '../../../fastener';
import {
  partKeyOf,
  readPartNumber,
  sayPartNumberProblem,
  writeTradeNumber,
  type NumberRules,
} from '../../../part-number';
import {
  cellsOfFastener,
  fastenerOfCells,
  SAYS_MORE,
  type CellProblem,
  type PartSheetRow,
  type TradeNumberCell,
} from '../../../sheets';
import type { BulkPart, PartRow, ReadSheetRow, Tables, WeighedRow } from '../../ports/index';
import { added, alike, changed, problem, rejected, same, settled, type KindRun, type OpenKind } from '../kind-work';
import { RowTable } from '../row-table';
import { SaidBefore } from '../said-before';
import { newRevision } from '../new-revision';
import { withZeros } from './eaten-zeros';
import { demandOf, readShape } from '../../../shape';

/** A part number as its maker's rules read it, or why they cannot. */
export type ReadNumber =
  | { readonly ok: true; readonly key: string; readonly canonical: string }
  | { readonly ok: false; readonly problem: CellProblem };

/** Parts of the catalogue. */
export const openParts: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const makers = await rulesByCode(tx);
  const said = new SaidBefore();
  const sofar: Pick<Bags, 'claimed' | 'givenUp'> = { claimed: new RowTable(), givenUp: new Map() };
  let writes: BulkPart[] = [];
  return {
    async weigh(rows) {
      writes = [];
      const read = rows.map((row) => ({ row, number: numberOf(row, makers) }));
      const keys = read.flatMap(({ number }) => (number.ok ? [number.key, ...withZeros(number)] : []));
      const known = new Map((await tx.catalogue.partsByKeys(keys)).map((part) => [part.key, part]));
      const bags = await bagsOf(tx, rows, known, sofar);
      return read.map(({ row, number }) => {
        if (!number.ok) return rejected(row.n, number.problem);
        const taken = takenBag(row, number.key, bags);
        if (taken) return taken;
        const weighed = weighPart(row, number, known, bags, said);
        if (weighed.row.outcome !== null) claimBags(row, number.key, known, bags);
        if ('write' in weighed) writes.push(weighed.write);
        return weighed.row;
      });
    },
    write: () => tx.bulk.saveParts(writes),
    finish: () => newRevision(tx, actor),
  };
};

export async function rulesByCode(tx: Tables): Promise<ReadonlyMap<string, NumberRules>> {
  return new Map((await tx.catalogue.makers()).map(({ code, numberRules }) => [code, numberRules]));
}

/** Reads a number as the maker of that code writes them. */
export function readNumber(
  number: string,
  maker: string,
  makers: ReadonlyMap<string, NumberRules>,
  [numberField, makerField]: readonly [string, string] = ['number', 'maker'],
): ReadNumber {
  const rules = makers.get(maker);
  if (!rules) {
    const says = `There is no maker "${maker}" on file; ${makers.size === 0 ? 'bring makers in first' : `there are ${[...makers.keys()].slice(0, 12).join(', ')}`}.`;
    return { ok: false, problem: problem(makerField, 'not-on-file', says) };
  }
  const reading = readPartNumber(number, rules);
  if (!reading.ok)
    return { ok: false, problem: problem(numberField, 'not-accepted', sayPartNumberProblem(number, reading.problem)) };
  const { canonical, pack } = reading.number;
  if (pack > 1)
    return {
      ok: false,
      problem: problem(
        numberField,
        'not-accepted',
        `"${number}" is a bag of ${pack}; give the number of the part in it.`,
      ),
    };
  return { ok: true, key: partKeyOf(maker, canonical), canonical };
}

function numberOf({ values }: ReadSheetRow, makers: ReadonlyMap<string, NumberRules>): ReadNumber {
  const { maker, number } = values as unknown as PartSheetRow;
  return readNumber(number, maker, makers);
}

function weighPart(
  { n, values }: ReadSheetRow,
  number: { readonly key: string; readonly canonical: string },
  known: ReadonlyMap<string, PartRow>,
  { kept: keptBags }: Bags,
  said: SaidBefore,
): { readonly row: WeighedRow } | { readonly row: WeighedRow; readonly write: BulkPart } {
  const row = values as unknown as PartSheetRow;
  const again = said.look(n, number.key, { ...row, number: '' }, `part ${row.number}`);
  if (again) return { row: again };
  const before = known.get(number.key);
  const eaten = before
    ? undefined
    : withZeros(number)
        .map((key) => known.get(key))
        .find((part) => part?.listed);
  if (eaten) {
    const says = `"${row.number}" is not on file, but ${eaten.number} is; if a spreadsheet ate its zeros, enter it anew as text.`;
    return { row: rejected(n, problem('number', 'leading-zeros', says)) };
  }
  const kept = before?.fastener ? fastenerSpecSchema.parse(before.fastener) : null;
  const fastener = fastenerFor(row, kept);
  if (!fastener.ok) return { row: rejected(n, fastener.problem) };
  const part: BulkPart = {
    key: number.key,
    maker: row.maker,
    number: row.number,
    canonical: number.canonical,
    name: settled(row.name, before?.listed ? before.name : undefined, ''),
    fastener: fastener.value,
    priceMinor: minorUnits(row.price, before?.priceMinor ?? null),
    ...(row.tradeNumbers === undefined ? {} : { tradeNumbers: byGtin(row.tradeNumbers ?? []) }),
  };
  if (!before) return { row: added(n), write: part };
  const was = {
    number: before.number,
    name: before.name,
    fastener: kept,
    priceMinor: before.priceMinor,
    ...(row.tradeNumbers === undefined ? {} : { tradeNumbers: byGtin(keptBags.get(before.id) ?? []) }),
  };
  const { key: _key, maker: _maker, canonical: _canonical, ...now } = part;
  return before.listed && alike(was, now) ? { row: same(n) } : { row: changed(n), write: part };
}

/** Which part a trade number is of: on file, and in the rows before. */
interface Bags {
  readonly kept: ReadonlyMap<number, readonly TradeNumberCell[]>;
  /** Parts on file by number. */
  readonly held: ReadonlyMap<string, PartRow>;
  /** Of the rows taken so far: which part each number was given. */
  readonly claimed: RowTable;
  /** Of the same: numbers that were on file and are not named any more, to the key of the part they were of. */
  readonly givenUp: Map<string, string>;
}

async function bagsOf(
  tx: Tables,
  rows: readonly ReadSheetRow[],
  known: ReadonlyMap<string, PartRow>,
  sofar: Pick<Bags, 'claimed' | 'givenUp'>,
): Promise<Bags> {
  const named = rows.flatMap(({ values }) => (values as unknown as PartSheetRow).tradeNumbers ?? []);
  if (
    named.length === 0 &&
    rows.every(({ values }) => (values as unknown as PartSheetRow).tradeNumbers === undefined)
  ) {
    return { kept: new Map(), held: new Map(), ...sofar };
  }
  const held = await tx.catalogue.partsByTradeNumbers(named.map(({ gtin }) => gtin));
  const kept = new Map<number, TradeNumberCell[]>();
  for (const { partId, gtin, pack } of await tx.catalogue.tradeNumbersOf([...known.values()].map(({ id }) => id))) {
    kept.set(partId, [...(kept.get(partId) ?? []), { gtin, pack }]);
  }
  return { kept, held: new Map(held.map(({ gtin, part }) => [gtin, part])), ...sofar };
}

/**
 * A trade number is of one part: a row that gives another's is rejected, and says whose it is. What a row before gave up
 * is free, whether that row is written already, as in an import of many, or not, as when a file is only looked at.
 */
function takenBag({ n, values }: ReadSheetRow, key: string, { held, claimed, givenUp }: Bags): WeighedRow | null {
  for (const { gtin } of (values as unknown as PartSheetRow).tradeNumbers ?? []) {
    const onFile = held.get(gtin);
    const holder = onFile && givenUp.get(gtin) === onFile.key ? undefined : onFile;
    const before = claimed.find(gtin, key);
    const whose =
      holder && holder.key !== key
        ? `is the number of ${holder.number} already`
        : before && !before.isSame
          ? `is given to another part in row ${before.n}`
          : null;
    if (whose === null) continue;
    const says = `${writeTradeNumber(gtin)} ${whose}; a number is of one part.`;
    return rejected(n, problem('tradeNumbers', 'not-accepted', says));
  }
  return null;
}

/** Notes which numbers a row that is taken gives its part, and which it leaves out. */
function claimBags(
  { n, values }: ReadSheetRow,
  key: string,
  known: ReadonlyMap<string, PartRow>,
  { kept, claimed, givenUp }: Bags,
): void {
  const { tradeNumbers } = values as unknown as PartSheetRow;
  if (tradeNumbers === undefined) return;
  const named = new Set((tradeNumbers ?? []).map(({ gtin }) => gtin));
  for (const gtin of named) claimed.put(n, gtin, key);
  const before = known.get(key);
  for (const { gtin } of before ? (kept.get(before.id) ?? []) : []) if (!named.has(gtin)) givenUp.set(gtin, key);
}

/** In order of number, each once. */
function byGtin(numbers: readonly TradeNumberCell[]): TradeNumberCell[] {
  const once = new Map(numbers.map(({ gtin, pack }) => [gtin, { gtin, pack }]));
  return [...once.values()].sort((a, b) => (a.gtin < b.gtin ? -1 : 1));
}

function minorUnits(price: number | null | undefined, kept: number | null): number | null {
  if (price === undefined) return kept;
  return price === null ? null : Math.round(price * 100);
}

function fastenerFor(row: PartSheetRow, kept: FastenerSpec | null) {
  const before = cellsOfFastener(kept);
  const names = Object.keys(cellsOfFastener(EXAMPLE)) as (keyof typeof before)[];
  const given = Object.fromEntries(names.filter((name) => row[name] !== undefined).map((name) => [name, row[name]]));
  if (Object.keys(given).length === 0) return { ok: true, value: kept } as const;
  // A groove that is taken away takes with it what was on file about it.
  const gone = Object.entries(SAYS_MORE).flatMap(([head, more]) =>
    row[head as keyof typeof SAYS_MORE] === null ? more : [],
  );
  const cells = fastenerOfCells({ ...before, ...Object.fromEntries(gone.map((name) => [name, null])), ...given });
  if (cells === null) return { ok: true, value: null } as const;
  const read = readShape(fastenerSpecSchema, cells);
  if (read.ok) return { ok: true, value: read.value } as const;
  const [lacking] = read.problems;
  const field = FIELD_OF[String(lacking.path[0])] ?? 'diameter';
  const says = `As a fastener it is not whole: ${lacking.path.join('.')} ${demandOf(lacking)}.`;
  return { ok: false, problem: problem(field, 'not-accepted', says) } as const;
}

const FIELD_OF: Readonly<Record<string, string>> = {
  diameterMm: 'diameter',
  lengthMm: 'length',
  thread: 'pitch',
  groove: 'grooveRoot',
  crossHole: 'crossHole',
  boreDiameterMm: 'bore',
  grade: 'grade',
  headMarks: 'headMarks',
  finish: 'finish',
};

/** Names every cell of a fastener. */
const EXAMPLE = fastenerSpecSchema.parse({
  diameterMm: 1,
  grade: { kind: 'known', system: 'ISO 898-1', grade: '8.8' },
});
