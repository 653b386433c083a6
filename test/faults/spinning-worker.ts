import { startWorker } from '../../apps/worker/src/start-worker';
import { openStore } from '../../libs/store';
import type { Store, Tables } from '../../libs/usecases';
import { CHUNK_UNITS } from './house';

const setting = (name: string): string => process.env[name] ?? '';

/** Keeps the processor busy without ever giving way, as a loop without an end does. */
function spin(ms: number): void {
  for (const end = performance.now() + ms; performance.now() < end;);
}

/** The same tables, but whoever reads the unit to judge it is held up. */
function heldUp(tx: Tables): Tables {
  const installs: Tables['installs'] = {
    ...tx.installs,
    async held(choice) {
      const rows = await tx.installs.held(choice);
      if (rows.some(({ unit }) => unit.id === Number(setting('SPIN_UNIT')))) spin(Number(setting('SPIN_MS')));
      return rows;
    },
  };
  return { ...tx, installs };
}

/** A worker as it is, except that judging one unit takes its processor for a long time. */
async function main(): Promise<void> {
  const url = setting('DATABASE_URL');
  const open = openStore({ url, poolSize: 6, name: 'spinning', idleLimitMs: Number(setting('IDLE_LIMIT_MS')) });
  const store: Store = { ...open, transaction: (work, most) => open.transaction((tx) => work(heldUp(tx)), most) };
  await startWorker({
    config: { redisUrl: setting('REDIS_URL'), workerConcurrency: 2, timeZone: 'UTC', chunkUnits: CHUNK_UNITS },
    store,
    sweepEveryMs: 500,
  });
  process.stdout.write('ready\n');
}

void main();
