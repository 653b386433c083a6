import { ZenEngine, type ZenDecision } from '@gorules/zen-engine';
import { Engine } from 'json-rules-engine';
import { clearAway, processorTime } from './processor-time';
import { POSITIONS, RULES_A_POSITION, type PlainRule, type Workload } from './workload';

/** Rows in one call: about what was fastest on a two-core machine. */
const ROWS_A_CALL = 1_000;

type Facts = Record<string, string | number | boolean>;

function factsOf({ units, unitBuilt, unit, position }: Workload, row: number): Facts {
  const { model, options, serial } = units[unit[row]!]!;
  return {
    position: position[row]!,
    built: unitBuilt[unit[row]!]!,
    model: model!,
    option: options.clutch!,
    serial: Number(serial!.key),
  };
}

/** A rule engine that is asked for the rule that decides; matching the part against it is left out, in its favour. */
export interface Contender {
  readonly name: string;
  /** Runs all rows and gives the rule per row, with the processor time. Building the inputs is not timed. */
  run(): Promise<{ readonly milliseconds: number; readonly ruleOfRow: Int32Array }>;
  close(): void;
}

/** The fastest way found: one decision table per line, rows of a line in batches in its loop mode, two calls in flight. */
export function zenContender(work: Workload, rows: number): Contender {
  const engine = new ZenEngine();
  const calls = batchesByLine(work, rows);
  const decisions = new Map<number, ZenDecision>();
  for (const { line } of calls) {
    if (decisions.has(line)) continue;
    const rules = work.plainRules.filter((rule) => rule.line === line);
    decisions.set(line, engine.createDecision(Buffer.from(JSON.stringify(decisionTable(rules)))));
  }
  const run = async () => {
    const ruleOfRow = new Int32Array(rows).fill(-1);
    clearAway();
    const start = processorTime();
    let next = 0;
    const inFlight = async () => {
      while (next < calls.length) {
        const { line, rows: batch, input } = calls[next++]!;
        const { result } = (await decisions.get(line)!.evaluate({ rows: input })) as { result: { rule: number }[] };
        batch.forEach((row, i) => (ruleOfRow[row] = result[i]!.rule));
      }
    };
    await Promise.all([inFlight(), inFlight()]);
    return { milliseconds: processorTime() - start, ruleOfRow };
  };
  return { name: '@gorules/zen-engine', run, close: () => engine.dispose() };
}

function batchesByLine(work: Workload, rows: number): { line: number; rows: number[]; input: Facts[] }[] {
  const byLine = new Map<number, number[]>();
  for (let row = 0; row < rows; row++) {
    const line = work.unitLine[work.unit[row]!]!;
    const own = byLine.get(line);
    if (own) own.push(row);
    else byLine.set(line, [row]);
  }
  return [...byLine].flatMap(([line, own]) => {
    const batches = [];
    for (let at = 0; at < own.length; at += ROWS_A_CALL) {
      const batch = own.slice(at, at + ROWS_A_CALL);
      batches.push({ line, rows: batch, input: batch.map((row) => factsOf(work, row)) });
    }
    return batches;
  });
}

function decisionTable(rules: readonly PlainRule[]): object {
  const column = (field: string) => ({ id: field, name: field, field });
  const content = {
    hitPolicy: 'first',
    passThrough: false,
    inputField: 'rows',
    outputPath: null,
    executionMode: 'loop',
    inputs: ['position', 'built', 'model', 'option', 'serial'].map(column),
    outputs: [column('rule')],
    rules: rules.map((rule) => ({
      _id: String(rule.id),
      position: String(rule.position),
      built: `[${rule.from}..${rule.to})`,
      model: rule.model === null ? '' : `"${rule.model}"`,
      option: rule.option === null ? '' : String(rule.option),
      serial: rule.serialFrom !== null ? `>= ${rule.serialFrom}` : rule.serialTo !== null ? `< ${rule.serialTo}` : '',
      rule: String(rule.id),
    })),
  };
  const node = (id: string, type: string, extra: object = {}) => ({
    id,
    type,
    name: id,
    position: { x: 0, y: 0 },
    ...extra,
  });
  return {
    nodes: [node('in', 'inputNode'), node('table', 'decisionTableNode', { content }), node('out', 'outputNode')],
    edges: [
      { id: 'a', sourceId: 'in', targetId: 'table', type: 'edge' },
      { id: 'b', sourceId: 'table', targetId: 'out', type: 'edge' },
    ],
  };
}

/** The fastest way found: one engine per line and position, with its six rules. */
export function jsonRulesContender(work: Workload, rows: number): Contender {
  const engines = new Map<number, Engine>();
  const inputs = Array.from({ length: rows }, (_, row) => {
    const place = work.unitLine[work.unit[row]!]! * POSITIONS + work.position[row]!;
    if (!engines.has(place))
      engines.set(place, engineOf(work.plainRules.slice(place * RULES_A_POSITION, (place + 1) * RULES_A_POSITION)));
    return { engine: engines.get(place)!, facts: factsOf(work, row) };
  });
  const run = async () => {
    const ruleOfRow = new Int32Array(rows).fill(-1);
    clearAway();
    const start = processorTime();
    for (let row = 0; row < rows; row++) {
      const { engine, facts } = inputs[row]!;
      const { events } = await engine.run(facts);
      ruleOfRow[row] = Number(events[0]!.type);
    }
    return { milliseconds: processorTime() - start, ruleOfRow };
  };
  return { name: 'json-rules-engine', run, close: () => engines.clear() };
}

function engineOf(rules: readonly PlainRule[]): Engine {
  const engine = new Engine();
  for (const rule of rules) {
    const conditions: { fact: string; operator: string; value: string | number | boolean }[] = [
      { fact: 'built', operator: 'greaterThanInclusive', value: rule.from },
      { fact: 'built', operator: 'lessThan', value: rule.to },
    ];
    if (rule.model !== null) conditions.push({ fact: 'model', operator: 'equal', value: rule.model });
    if (rule.option !== null) conditions.push({ fact: 'option', operator: 'equal', value: rule.option });
    if (rule.serialFrom !== null)
      conditions.push({ fact: 'serial', operator: 'greaterThanInclusive', value: rule.serialFrom });
    if (rule.serialTo !== null) conditions.push({ fact: 'serial', operator: 'lessThan', value: rule.serialTo });
    engine.addRule({ conditions: { all: conditions }, event: { type: String(rule.id) } });
  }
  return engine;
}
