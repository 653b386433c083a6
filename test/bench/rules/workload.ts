import { day } from '../../../libs/day';
import {
  CAME_WITH_UNIT,
  usualStanding,
  type FitRule,
  type Rulebook,
  type Source,
  type UnitFacts,
} from '../../../libs/fit-rules';

/** 200 lines of 12 positions with 6 rules each, and one older rule per position that a newer paper has overtaken. */
export const LINES = 200;
export const POSITIONS = 12;
export const RULES_A_POSITION = 6;
export const TODAY = day('2026-06-01');
export const NOW = (TODAY + 1) * 86_400_000 - 1;

export const FIRST_DAY = day('2005-01-01');
export const LAST_DAY = day('2025-01-01');
const NEW_PAPERS = day('2018-01-01');
export const SERIALS = 90_000;

/** A rule of today as every engine is given it. Numbers only: the engines compare them fastest. */
export interface PlainRule {
  readonly id: number;
  readonly line: number;
  readonly position: number;
  readonly from: number;
  readonly to: number;
  readonly model: string | null;
  readonly option: boolean | null;
  readonly serialFrom: number | null;
  readonly serialTo: number | null;
}

export interface Workload {
  readonly rulebook: Rulebook;
  readonly plainRules: readonly PlainRule[];
  /** Units, each with its facts; row i speaks of unit `unit[i]`. */
  readonly units: readonly UnitFacts[];
  readonly unitBuilt: Int32Array;
  readonly unitLine: Int32Array;
  readonly unit: Int32Array;
  readonly position: Int32Array;
  /** Part numbers as text. */
  readonly part: readonly string[];
  readonly fittedOn: Int32Array;
}

/** Numbers in [0, 1), the same for the same seed (mulberry32, public domain). */
export function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export const lineName = (line: number) => `line-${line}`;
export const positionName = (position: number) => `position-${position}`;
export const serialKey = (serial: number) => String(serial).padStart(6, '0');
export const newPart = (rule: number) => `DEMO/N${rule}`;
export const allowedPart = (rule: number) => `DEMO/A${rule}`;
export const barredPart = (rule: number) => `DEMO/B${rule}`;
export const oldPart = (line: number, position: number) => `DEMO/O${line}-${position}`;

const sources: readonly Source[] = [
  { key: 'old', kind: 'parts-list', issued: FIRST_DAY },
  { key: 'new', kind: 'revised-parts-list', issued: NEW_PAPERS },
].map(({ key, kind, issued }) => ({
  key,
  kind: kind as Source['kind'],
  publisher: 'Demo',
  number: key,
  title: key,
  issued,
  effective: null,
  received: issued,
}));

/** Splits of the production span; a position with a second condition has half as many, each twice. */
function plainRulesOf(line: number, position: number, next: () => number): PlainRule[] {
  const second = ['model', 'option', 'serial'][position - 9] ?? null;
  const pieces = second === null ? RULES_A_POSITION : RULES_A_POSITION / 2;
  const cuts = Array.from({ length: pieces - 1 }, () => FIRST_DAY + Math.floor(next() * (LAST_DAY - FIRST_DAY))).sort(
    (a, b) => a - b,
  );
  const serialCut = Math.floor(next() * SERIALS);
  const first = (line * POSITIONS + position) * RULES_A_POSITION;
  return Array.from({ length: RULES_A_POSITION }, (_, i) => {
    const piece = i % pieces;
    const half = i < pieces;
    return {
      id: first + i,
      line,
      position,
      from: cuts[piece - 1] ?? FIRST_DAY,
      to: cuts[piece] ?? LAST_DAY,
      model: second === 'model' ? (half ? 'model-0' : 'model-1') : null,
      option: second === 'option' ? half : null,
      serialFrom: second === 'serial' && !half ? serialCut : null,
      serialTo: second === 'serial' && half ? serialCut : null,
    };
  });
}

const blank = {
  version: 1,
  known: { from: -Infinity, to: Infinity },
  action: 'call-back',
  replaces: [],
  serials: null,
  models: [],
  options: [],
} as const;

function fitRule(rule: PlainRule): FitRule {
  const { id, line, position, from, to, model, option, serialFrom, serialTo } = rule;
  const bySerial = serialFrom !== null || serialTo !== null;
  return {
    ...blank,
    key: `rule-${id}`,
    line: lineName(line),
    positions: [positionName(position)],
    models: model === null ? [] : [model],
    options: option === null ? [] : [{ option: 'clutch', fitted: option }],
    serials: bySerial
      ? {
          scheme: 'six',
          from: serialFrom === null ? null : serialKey(serialFrom),
          to: serialTo === null ? null : serialKey(serialTo),
        }
      : null,
    built: { from, to },
    inForce: { from: NEW_PAPERS, to: Infinity },
    source: 'new',
    required: newPart(id),
    allowed: [allowedPart(id)],
    barred: [{ part: barredPart(id), reason: 'breaks-later', note: '' }],
  };
}

function oldRule(line: number, position: number): FitRule {
  return {
    ...blank,
    key: `old-${line}-${position}`,
    line: lineName(line),
    positions: [positionName(position)],
    built: { from: -Infinity, to: Infinity },
    inForce: { from: FIRST_DAY, to: NEW_PAPERS },
    source: 'old',
    required: oldPart(line, position),
    allowed: [],
    barred: [],
  };
}

/** True when the rule covers a unit with these facts. */
export function plainCovers(rule: PlainRule, unit: UnitFacts, built: number): boolean {
  const serial = Number(unit.serial!.key);
  return (
    rule.from <= built &&
    built < rule.to &&
    (rule.model === null || rule.model === unit.model) &&
    (rule.option === null || rule.option === unit.options.clutch) &&
    (rule.serialFrom === null || rule.serialFrom <= serial) &&
    (rule.serialTo === null || serial < rule.serialTo)
  );
}

/** Makes the rules and `rows` installs, twelve to a unit; the same for the same number. */
export function workload(rows: number): Workload {
  const next = stream(1);
  const plainRules: PlainRule[] = [];
  for (let line = 0; line < LINES; line++) {
    for (let position = 0; position < POSITIONS; position++) plainRules.push(...plainRulesOf(line, position, next));
  }
  const old = Array.from({ length: LINES * POSITIONS }, (_, i) => oldRule(Math.floor(i / POSITIONS), i % POSITIONS));
  const rules = [...plainRules.map(fitRule), ...old];
  const rulebook = { rules, sources, supersessions: [], standing: usualStanding };
  return { rulebook, plainRules, ...installs(rows, plainRules, stream(2)) };
}

function installs(
  rows: number,
  rules: readonly PlainRule[],
  next: () => number,
): Omit<Workload, 'rulebook' | 'plainRules'> {
  const count = Math.ceil(rows / POSITIONS);
  const unitBuilt = new Int32Array(count);
  const unitLine = new Int32Array(count);
  const units = Array.from({ length: count }, (_, i): UnitFacts => {
    const built = FIRST_DAY + Math.floor(next() * (LAST_DAY - FIRST_DAY));
    unitBuilt[i] = built;
    unitLine[i] = Math.floor(next() * LINES);
    return {
      line: lineName(unitLine[i]),
      model: next() < 0.5 ? 'model-0' : 'model-1',
      options: { clutch: next() < 0.5 },
      serial: { scheme: 'six', key: serialKey(Math.floor(next() * SERIALS)) },
      built: [{ from: built, to: built + 1 }],
    };
  });
  const unit = new Int32Array(rows);
  const position = new Int32Array(rows);
  const fittedOn = new Int32Array(rows);
  const part = Array.from({ length: rows }, (_, i) => {
    unit[i] = Math.floor(i / POSITIONS);
    position[i] = i % POSITIONS;
    fittedOn[i] = next() < 0.3 ? CAME_WITH_UNIT : unitBuilt[unit[i]]! + Math.floor(next() * 4_000);
    return partFor(rules, unitLine[unit[i]]!, position[i], units[unit[i]]!, unitBuilt[unit[i]]!, next);
  });
  return { units, unitBuilt, unitLine, unit, position, part, fittedOn };
}

/** 88 of 100 hold what is required, 4 what is allowed, 3 what is barred, 3 the part of the old list, 2 any other. */
function partFor(
  rules: readonly PlainRule[],
  line: number,
  position: number,
  unit: UnitFacts,
  built: number,
  next: () => number,
): string {
  const first = (line * POSITIONS + position) * RULES_A_POSITION;
  let id = first;
  while (!plainCovers(rules[id]!, unit, built)) id++;
  const drawn = next();
  if (drawn < 0.88) return newPart(id);
  if (drawn < 0.92) return allowedPart(id);
  if (drawn < 0.95) return barredPart(id);
  return drawn < 0.98 ? oldPart(line, position) : newPart((id + 1) % rules.length);
}
