import { verifyTrail } from '../../libs/store';
import { Draw } from './draw';
import { Tally, type Fault, type FaultReport } from './fault';
import { type House } from './house';
import { workerKilled } from './kinds/f01-worker-killed';
import { everyStep } from './kinds/f02-every-step';
import { queueAway } from './kinds/f04-queue-away';
import { queueForgets } from './kinds/f05-queue-forgets';
import { databaseStops } from './kinds/f07-database-stops';
import { linesCut } from './kinds/f08-lines-cut';
import { madeToTryAgain } from './kinds/f09-made-to-try-again';
import { publishedByMany } from './kinds/f10-published-by-many';
import { settledByMany } from './kinds/f11-settled-by-many';
import { papersAtOnce } from './kinds/f12-papers-at-once';
import { recordedMeanwhile } from './kinds/f12-recorded-meanwhile';
import { deliveredTwice } from './kinds/f13-delivered-twice';
import { cannotBeJudged } from './kinds/f14-cannot-be-judged';
import { wrongClocks } from './kinds/f15-wrong-clocks';
import { malformedRequests } from './kinds/f16-malformed-requests';
import { modelOfTheShop } from './kinds/f17-model-of-the-shop';
import { rollingRestart } from './kinds/f20-rolling-restart';
import { backupAndRestore } from './kinds/f21-backup-and-restore';
import { migratedAtWork } from './kinds/f22-migrated-at-work';
import { everythingAtOnce } from './kinds/f24-everything-at-once';

export const FAULTS: readonly Fault[] = [
  workerKilled,
  everyStep,
  queueAway,
  queueForgets,
  databaseStops,
  linesCut,
  madeToTryAgain,
  publishedByMany,
  settledByMany,
  recordedMeanwhile,
  papersAtOnce,
  deliveredTwice,
  cannotBeJudged,
  wrongClocks,
  malformedRequests,
  modelOfTheShop,
  rollingRestart,
  backupAndRestore,
  migratedAtWork,
  everythingAtOnce,
];

export interface FaultOptions {
  readonly seed: number;
  readonly short: boolean;
  /** Scales every dose; 1 is the whole of it. */
  readonly dose: number;
  readonly patienceMs: number;
}

/** Brings about one kind of fault in a house, and leaves nobody working there. A failure of the suite itself is red too. */
export async function runFault(
  house: House,
  fault: Fault,
  options: FaultOptions,
  tally = new Tally(),
): Promise<FaultReport> {
  const { seed, short, dose, patienceMs } = options;
  const whole = short ? fault.short : fault.full * dose;
  // The exhaustive kind takes a share; all others a number of times.
  const exhaustive = fault.full === 1;
  const plan = {
    house,
    dose: exhaustive ? Math.min(1, whole) : Math.max(1, Math.round(whole)),
    awayMs: short ? 1_500 : 30_000,
    draw: new Draw(seed),
    patienceMs,
    timed: !short,
  };
  tally.whole = exhaustive ? null : plan.dose;
  try {
    await fault.run(plan, tally);
    const report = tally.report();
    // (v) The trail of changes is whole: one row a change, each chained to the one before.
    const trail = await verifyTrail(house.pool);
    const broken = trail.fault ? [`the trail of changes breaks at row ${trail.fault.id}: ${trail.fault.why}`] : [];
    return { ...report, problems: [...report.problems, ...broken] };
  } catch (error) {
    tally.check(false, `broken off: ${String((error as Error).stack ?? error)}`);
    return tally.report();
  } finally {
    await house.rest();
  }
}

/**
 * Takes the guard away that makes sure of "at most once", to see that its absence is noticed. The statement that opens a
 * call names the key, so it must find one: this one has the same columns, and never finds two alike.
 */
export async function withoutUniqueKey({ pool }: House): Promise<void> {
  const compared = ['<', '<=', '=', '>=', '>'].map((sign) => {
    const answer = sign.startsWith('<') ? 'a <= b' : sign === '=' ? 'false' : 'a > b';
    const [name, operator] = [`unlike_${['<', '<=', '=', '>=', '>'].indexOf(sign)}`, `${sign}#`];
    return {
      operator,
      sql: `CREATE FUNCTION ${name}(a int, b int) RETURNS boolean LANGUAGE sql IMMUTABLE AS 'SELECT ${answer}';
            CREATE OPERATOR ${operator} (LEFTARG = int, RIGHTARG = int, FUNCTION = ${name});`,
    };
  });
  const strategies = compared.map(({ operator }, i) => `OPERATOR ${i + 1} ${operator} (int, int)`);
  await pool.query(`
    DROP INDEX callback_one_open_per_unit;
    ${compared.map(({ sql }) => sql).join('\n')}
    CREATE FUNCTION never_alike(a int, b int) RETURNS int LANGUAGE sql IMMUTABLE
      AS 'SELECT CASE WHEN a <= b THEN -1 ELSE 1 END';
    CREATE OPERATOR CLASS never_alike FOR TYPE int USING btree AS ${strategies.join(', ')}, FUNCTION 1 never_alike(int, int);
    CREATE UNIQUE INDEX callback_one_open_per_unit ON callback (unit_id never_alike) WHERE state IN ('open', 'booked')`);
}

const short = (problem: string): string => problem.replace(/\s+/g, ' ').slice(0, 400);

/** One line for people while it goes on: how far it is, and what it has found already. */
export function lineSoFar(
  { id, title }: Fault,
  { dose, hits, whole, problems, soFar }: Tally,
  seconds: number,
): string {
  const words = [
    `${id.padEnd(4)}${title}`,
    whole === null ? `${dose} so far` : `${dose} of ${whole} so far`,
    `in mid-work ${hits}`,
    problems.length === 0 ? '' : `${problems.length} did not hold: ${short(problems[0]!)}`,
    soFar(),
    `${seconds.toFixed(0)} s`,
  ];
  return words.filter(Boolean).join(' | ');
}

/** One line for people: what was done, how often it struck in mid-work, what came of it. */
export function lineOf({ id, title }: Fault, { dose, hits, problems, note }: FaultReport, seconds: number): string {
  const result = problems.length === 0 ? 'held' : `FAILED: ${problems.map(short).join(' / ')}`;
  const words = [
    `${id.padEnd(4)}${title}`,
    `dose ${dose}`,
    `in mid-work ${hits}`,
    result,
    note,
    `${seconds.toFixed(0)} s`,
  ];
  return words.filter(Boolean).join(' | ');
}
