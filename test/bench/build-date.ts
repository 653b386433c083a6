import { day, formatDay, civilDateOf, type Day } from '../../libs/day';
import {
  PUBLISHED_STANDARD_EDITIONS,
  EvidenceListSchema,
  ShopDataSchema,
  inferBuildDates,
  inferBuildDays,
  modelYearCharacter,
  prepareShop,
  writeSerial,
  type Evidence,
} from '../../libs/build-date';

interface BenchLine {
  name: string;
  value: number;
  unit: string;
  goal: number | null;
  holds: boolean;
}

const MAKER = 'Harrowgate';
const TODAY = day('2026-11-25');
const GOAL_PER_SECOND = 200_000;
const GOAL_CONFLICTS_MS = 50;
const UNITS = 2_000;
const ROUNDS = 7;
const MILLISECONDS_PER_ROUND = 400;

const shopData = ShopDataSchema.parse({
  standardEditions: PUBLISHED_STANDARD_EDITIONS,
  serialSchemes: [
    {
      id: 'harrowgate-1',
      maker: MAKER,
      name: 'year digit and month letter',
      validFrom: '1995-01-01',
      validTo: '2015-07-01',
      fields: [
        { kind: 'plant', length: 1 },
        { kind: 'year-digit' },
        { kind: 'month-letter', letters: 'ABCDEFGHJKLM' },
        { kind: 'sequence', length: 5 },
      ],
    },
    {
      id: 'harrowgate-2',
      maker: MAKER,
      name: 'two-digit year and week',
      validFrom: '2015-07-01',
      validTo: null,
      fields: [
        { kind: 'literal', text: 'H' },
        { kind: 'year-two-digits' },
        { kind: 'iso-week' },
        { kind: 'separator' },
        { kind: 'sequence', length: 5 },
      ],
    },
  ],
});
const shop = prepareShop(shopData);

/** Six pieces as a bench would read them on a unit of that day: serial, standard, engine, stamp, receipt, first seen. */
function piecesOf(built: Day, number: number): Evidence[] {
  const scheme = shopData.serialSchemes[built < day('2015-07-01') ? 0 : 1]!;
  const { year } = civilDateOf(built);
  return EvidenceListSchema.parse([
    { id: 'a', kind: 'serial-scheme', maker: MAKER, serial: writeSerial(scheme, built, { sequence: number }) },
    { id: 'b', kind: 'standard-edition', standard: 'ANSI B71.3', edition: '2005' },
    {
      id: 'c',
      kind: 'engine-family',
      family: `${modelYearCharacter(year)}HGXS.2080AA`,
      engine: 'other',
    },
    { id: 'd', kind: 'part-stamp', part: 'gear case', date: formatDay(built - 45).slice(0, 7) },
    { id: 'e', kind: 'receipt', date: formatDay(built + 120) },
    { id: 'f', kind: 'first-seen', on: formatDay(built + 700) },
  ]);
}

/** Milliseconds this process has spent computing, which other work on the machine does not lengthen. */
function computed(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Middle of several rounds, each round counting whole passes over many different units, for one second of one core. */
function inferencesPerSecond(units: Evidence[][], infer: (unit: Evidence[]) => unknown): number {
  const rounds = Array.from({ length: ROUNDS }, () => {
    const begun = computed();
    let done = 0;
    while (computed() - begun < MILLISECONDS_PER_ROUND) for (const unit of units) if (infer(unit)) done++;
    return done / ((computed() - begun) / 1000);
  });
  return rounds.sort((a, b) => a - b)[ROUNDS >> 1]!;
}

/** Twenty pieces of which each day is ruled out by some: pairs, triples and chains of conflicts, all to be named. */
function millisecondsForConflicts(): number {
  const months = Array.from({ length: 10 }, (_, at): Evidence[] => [
    { id: `r${at}`, kind: 'receipt', date: `20${String(10 + at)}-03` },
    { id: `s${at}`, kind: 'part-stamp', part: 'hose', date: `20${String(11 + at)}-05` },
  ]);
  const times = Array.from({ length: 9 }, () => {
    const begun = computed();
    inferBuildDates(months.flat(), shop, TODAY);
    return computed() - begun;
  });
  return Math.max(...times);
}

async function run(): Promise<BenchLine[]> {
  const first = day('2005-01-03');
  const units = Array.from({ length: UNITS }, (_, at) => piecesOf(first + ((at * 37) % 6_900), at));
  const fast = inferencesPerSecond(units, (unit) => inferBuildDays(unit, shop, TODAY));
  const explained = inferencesPerSecond(units, (unit) => inferBuildDates(unit, shop, TODAY));
  const conflicts = millisecondsForConflicts();
  return Promise.resolve([
    {
      name: 'possible days of a unit with 6 pieces of evidence',
      value: Math.round(fast),
      unit: 'inferences/s of one core',
      goal: GOAL_PER_SECOND,
      holds: fast >= GOAL_PER_SECOND,
    },
    {
      name: 'the same with every reason in words',
      value: Math.round(explained),
      unit: 'inferences/s of one core',
      goal: null,
      holds: true,
    },
    {
      name: 'all minimal conflicts of 20 pieces, slowest of 9',
      value: Number(conflicts.toFixed(2)),
      unit: 'ms of one core',
      goal: GOAL_CONFLICTS_MS,
      holds: conflicts <= GOAL_CONFLICTS_MS,
    },
  ]);
}

export const benches = { name: 'build-date', run };
