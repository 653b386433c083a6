import { auditRulebook, createJudge, verdicts, type Judge, type Verdict } from '../../libs/fit-rules';
import { jsonRulesContender, zenContender, type Contender } from './rules/engines';
import { clearAway, processorTime } from './rules/processor-time';
import {
  allowedPart,
  barredPart,
  FIRST_DAY,
  LAST_DAY,
  LINES,
  lineName,
  newPart,
  NOW,
  oldPart,
  positionName,
  POSITIONS,
  TODAY,
  workload,
  type Workload,
} from './rules/workload';

interface BenchLine {
  name: string;
  value: number;
  unit: string;
  goal: number | null;
  holds: boolean;
}

const ROWS = 1_000_000;
const ZEN_ROWS = 100_000;
const JSON_RULES_ROWS = 3_000;
/** Installs in one chunk of a recheck: a thousand units. */
const CHUNK_ROWS = 1_000 * POSITIONS;
const ROUNDS = 5;
const TIMES_ZEN = 100;
const TIMES_JSON_RULES = 1_000;
const AUDIT_GOAL_MS = 1_000;

/** One full recheck's worth of judging, a chunk at a time: find each row's slot from its unit's facts, then its verdict. */
class OurRun {
  private readonly part: Int32Array;
  private readonly lines: readonly number[];
  private readonly builtFrom = new Int32Array(ROWS);
  private readonly builtTo = new Int32Array(ROWS);
  private readonly slotsAt = new Int32Array(CHUNK_ROWS);
  private readonly slot = new Int32Array(CHUNK_ROWS);
  readonly codes = new Uint8Array(ROWS);

  constructor(
    private readonly work: Workload,
    private readonly judge: Judge,
  ) {
    const positions = Array.from({ length: POSITIONS }, (_, i) => positionName(i));
    this.lines = Array.from({ length: LINES }, (_, i) => judge.bulk.lineOf(lineName(i), positions));
    // Part numbers become indexes while rows are read; a database sends each distinct part once.
    this.part = Int32Array.from(work.part, (part) => judge.bulk.partIndex(part));
    work.unit.forEach((unit, row) => {
      this.builtFrom[row] = work.unitBuilt[unit]!;
      this.builtTo[row] = work.unitBuilt[unit]! + 1;
    });
  }

  /** Milliseconds of processor time. */
  run(): number {
    clearAway();
    const start = processorTime();
    for (let first = 0; first < ROWS; first += CHUNK_ROWS) this.chunk(first, Math.min(first + CHUNK_ROWS, ROWS));
    return processorTime() - start;
  }

  private chunk(first: number, end: number): void {
    const { work, judge, lines, slotsAt, slot, part, builtFrom, builtTo, codes } = this;
    const { unit: unitOf, unitLine, position, units, fittedOn } = work;
    const { bulk } = judge;
    const [firstUnit, lastUnit] = [unitOf[first]!, unitOf[end - 1]!];
    for (let unit = firstUnit; unit <= lastUnit; unit++) {
      slotsAt[unit - firstUnit] = bulk.slotsOfUnit(lines[unitLine[unit]!]!, units[unit]!);
    }
    for (let row = first; row < end; row++) {
      slot[row - first] = bulk.slotOfUnit(slotsAt[unitOf[row]! - firstUnit]!, position[row]!);
    }
    const [chunkPart, from, to, fitted] = [part, builtFrom, builtTo, fittedOn].map((column) =>
      column.subarray(first, end),
    ) as [Int32Array, Int32Array, Int32Array, Int32Array];
    const rows = { slot, part: chunkPart, builtFrom: from, builtTo: to, fittedOn: fitted };
    bulk.judgeColumns(rows, end - first, codes.subarray(first, end));
  }
}

/** The verdict that follows from the rule an engine found, without the library. */
function verdictFrom(work: Workload, row: number, rule: number): Verdict {
  const part = work.part[row]!;
  if (part === newPart(rule)) return 'right';
  if (part === allowedPart(rule)) return 'allowed';
  if (part === barredPart(rule)) return 'wrong';
  const unit = work.unit[row]!;
  const old = oldPart(work.unitLine[unit]!, work.position[row]!);
  const fitted = work.fittedOn[row]! === -2_147_483_648 ? work.unitBuilt[unit]! : work.fittedOn[row]!;
  const newPapers = work.rulebook.sources[1]!.issued;
  return part === old && fitted < newPapers ? 'outdated' : 'wrong';
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** Rows whose verdict an engine and the library see differently. */
function differing(work: Workload, ruleOfRow: Int32Array, codes: Uint8Array): number {
  let count = 0;
  ruleOfRow.forEach((rule, row) => (count += verdictFrom(work, row, rule) === verdicts[codes[row]!] ? 0 : 1));
  return count;
}

async function against(
  ours: OurRun,
  work: Workload,
  other: Contender,
  rows: number,
  times: number,
): Promise<BenchLine[]> {
  let unlike = differing(work, (await other.run()).ruleOfRow, ours.codes);
  const ratios: number[] = [];
  const theirRates: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const { milliseconds, ruleOfRow } = await other.run();
    ratios.push(milliseconds / rows / (ours.run() / ROWS));
    theirRates.push((rows / milliseconds) * 1_000);
    unlike += differing(work, ruleOfRow, ours.codes);
  }
  other.close();
  const ratio = median(ratios);
  return [
    {
      name: `${other.name}, its best mode`,
      value: Math.round(median(theirRates)),
      unit: 'verdicts/s',
      goal: null,
      holds: true,
    },
    {
      name: `times faster than ${other.name}`,
      value: Math.round(ratio),
      unit: 'x',
      goal: times,
      holds: ratio >= times,
    },
    { name: `verdicts unlike ${other.name}`, value: unlike, unit: 'rows', goal: 0, holds: unlike === 0 },
  ];
}

function auditLine(): BenchLine[] {
  // Seven times the bench's lines make a little over 100,000 rules.
  const { rulebook } = workload(0);
  const copies = Array.from({ length: 7 }, (_, copy) =>
    rulebook.rules.map((rule) => ({ ...rule, key: `${copy}-${rule.key}`, line: `${copy}-${rule.line}` })),
  );
  const rules = copies.flat().slice(0, 100_000);
  const positions = Array.from({ length: POSITIONS }, (_, position) => positionName(position));
  const lines = [...new Set(rules.map(({ line }) => line))].map((line) => {
    const production = { from: FIRST_DAY, to: LAST_DAY };
    return { line, positions, models: ['model-0', 'model-1'], schemes: ['six'], production };
  });
  const context = { inForceOn: TODAY, knownAt: NOW, lines, catalogue: null, withdrawnSources: new Set<string>() };
  const times = Array.from({ length: ROUNDS + 1 }, () => {
    clearAway();
    const start = processorTime();
    auditRulebook({ ...rulebook, rules }, context);
    return processorTime() - start;
  });
  const value = Math.round(median(times.slice(1)));
  return [{ name: 'audit of 100,000 rules', value, unit: 'ms', goal: AUDIT_GOAL_MS, holds: value <= AUDIT_GOAL_MS }];
}

/**
 * Judging and auditing against two rule engines on the same rules and the same rows. All times are processor times of
 * the whole process, its helper threads included: what one core would take, whatever else the machine is doing. What
 * one run leaves behind is collected before the next is timed.
 */
export const benches = {
  name: 'rules',
  async run(): Promise<BenchLine[]> {
    // First, while nothing else is held: to the collector a million rows of the other figures are work too.
    const audit = auditLine();
    const work = workload(ROWS);
    const ours = new OurRun(work, createJudge(work.rulebook, { today: TODAY, now: NOW }));
    ours.run();
    const own = median(Array.from({ length: 9 }, () => ours.run()));
    return [
      {
        name: 'judging, full semantics',
        value: Math.round((ROWS / own) * 1_000),
        unit: 'verdicts/s',
        goal: null,
        holds: true,
      },
      ...(await against(ours, work, zenContender(work, ZEN_ROWS), ZEN_ROWS, TIMES_ZEN)),
      ...(await against(ours, work, jsonRulesContender(work, JSON_RULES_ROWS), JSON_RULES_ROWS, TIMES_JSON_RULES)),
      ...audit,
    ];
  },
};
