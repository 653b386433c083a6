import type { QueueState } from '../ports/recheck-store';
import type { Ports } from '../run';

type Gauge = readonly [name: string, help: string, value: (state: QueueState) => number];

const GAUGES: readonly Gauge[] = [
  ['bells_waiting', 'Bells ordered and not yet rung.', (one) => one.bellsWaiting],
  ['oldest_bell_seconds', 'Age of the oldest bell that is not yet rung.', (one) => one.oldestBellSeconds],
  ['chunks_waiting', 'Chunks that nobody works on.', (one) => one.chunksWaiting],
  ['chunks_held', 'Chunks that are queued or worked on.', (one) => one.chunksHeld],
  ['oldest_work_seconds', 'Age of the oldest recheck with work left.', (one) => one.oldestWorkSeconds],
  ['planned', 'Rechecks that are ordered and not yet cut into chunks.', (one) => one.rechecksPlanned],
  ['running', 'Rechecks under way.', (one) => one.rechecksRunning],
  ['done', 'Rechecks that are done.', (one) => one.rechecksDone],
  ['installs_judged', 'Installs judged by all rechecks.', (one) => one.installsJudged],
  ['set_aside', 'Units set aside because they could not be judged.', (one) => one.setAside],
];

/**
 * How the queue of rechecks stands, in the text form that monitoring programs read. Taken from the database, which knows
 * what is to be done also while the queue is away; an old `oldest_work_seconds` is the sign to look.
 */
export async function viewMetrics({ store }: Ports): Promise<string> {
  const state = await store.rechecks.queue();
  const label = '{queue="rechecks"}';
  const lines = GAUGES.flatMap(([name, help, value]) => gauge(name, help, [`${label} ${value(state)}`]));
  const workers = state.workers.map(({ name, concurrency }) => `{queue="rechecks",worker="${name}"} ${concurrency}`);
  lines.push(...gauge('worker_concurrency', 'Chunks a worker process judges at the same time.', workers));
  return `${lines.join('\n')}\n`;
}

function gauge(name: string, help: string, values: readonly string[]): readonly string[] {
  const full = `revright_recheck_${name}`;
  return [`# HELP ${full} ${help}`, `# TYPE ${full} gauge`, ...values.map((value) => full + value)];
}
