import type { FindingList, FindingsQuery } from '../../contracts';
import { sayDay } from '../../day';
import { auditRulebook, sayPlace, type Finding, type FullNaming, type UnitFacts } from '../../fit-rules';
import { loadRulebook, type LoadedRulebook } from '../rulebook';
import type { Ports } from '../run';
import { partRefOf } from '../rule-on-unit/part-ref';
import { auditContextOf } from './audit-context';
import { clocksOf, type Clocks } from './clocks';

/** The audit of the whole rulebook on demand, by the papers of any day and as known on any day; of one line if asked. */
export async function listFindings({ store, clock }: Ports, query: FindingsQuery): Promise<FindingList> {
  const loaded = await loadRulebook(store, clock);
  const clocks = clocksOf(query, loaded);
  const all = await findingsAt(store, loaded, clocks);
  const ofLine = all.filter(({ line }) => query.line === undefined || line === query.line);
  const told = ofLine.filter(({ severity }) => query.severity === undefined || severity === query.severity);
  const counts = { error: 0, warning: 0, note: 0 };
  for (const { severity } of ofLine) counts[severity]++;
  const keys = [...new Set(told.flatMap(({ parts }) => parts))];
  const parts = new Map((await store.catalogue.partsByKeys(keys)).map((part) => [part.key, part]));
  const findings = told.map((one) => ({
    ...viewOf(one, loaded.naming),
    parts: one.parts.map((key) => partRefOf(key, parts)),
  }));
  return { ...clocks.said, counts, findings };
}

async function findingsAt(
  store: Ports['store'],
  { rulebook, naming, shapes }: LoadedRulebook,
  { inForceOn, knownAt }: Clocks,
): Promise<readonly Finding[]> {
  return auditRulebook(rulebook, await auditContextOf(store, shapes, { inForceOn, knownAt }), naming);
}

/** A finding in words: its place, the units, an example of them, and what would mend it. */
function viewOf(finding: Finding, naming: FullNaming): Omit<FindingList['findings'][number], 'parts'> {
  const { code, severity, line, position, where, rules, example, sentence, mend } = finding;
  return {
    ...{ code, severity, line, position, sentence, mend },
    lineName: line === null ? null : naming.line(line),
    positionName: line === null || position === null ? null : naming.position(position, line),
    units: where && sayPlace(where),
    example: example && sayExample(example, naming),
    rules: rules.map((rule) => ({ key: rule.key, version: rule.version, paper: naming.rule(rule) })),
  };
}

function sayExample({ line, model, options, serial, built }: UnitFacts, naming: FullNaming): string {
  const words = [naming.line(line)];
  if (model !== null) words.push(`model ${model}`);
  if (built[0] !== undefined) words.push(`built ${sayDay(built[0].from)}`);
  if (serial !== null)
    words.push(serial.key ? `serial ${serial.key} (${serial.scheme})` : `a serial of ${serial.scheme}`);
  for (const [option, fitted] of Object.entries(options)) words.push(fitted ? `with ${option}` : `without ${option}`);
  return words.join(', ');
}
