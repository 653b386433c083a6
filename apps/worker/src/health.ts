import { readConfig } from '../../../libs/config';
import { asProgram, openStore } from '../../../libs/store';
import { viewReadiness } from '../../../libs/usecases';

/**
 * Asks once whether the workers of this database get on, and ends: with 0 when no work waits for longer than
 * OLDEST_WORK_SECONDS, else with 1 and one sentence. It starts no worker.
 */
async function main(): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) return say(1, read.problems.join('\n'));
  const { databaseUrl, oldestWorkSeconds } = read.config;
  if (databaseUrl === undefined) return say(1, 'DATABASE_URL is not set; there is no worker to ask about.');
  const store = openStore({ url: databaseUrl, poolSize: 1, name: 'health' });
  try {
    const ready = await asProgram(() => viewReadiness({ store }, oldestWorkSeconds));
    if (ready.ok) say(0, `The oldest work has waited for ${Math.round(ready.value.oldestWorkSeconds)} s.`);
    else say(1, ready.refusal.detail);
  } catch (error) {
    say(1, `The database does not answer (${error instanceof Error ? error.message : String(error)}).`);
  } finally {
    await store.close();
  }
}

function say(code: 0 | 1, sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = code;
}

void main();
