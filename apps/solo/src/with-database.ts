import { readConfig, type Config } from '../../../libs/config';
import { databaseOf, type FoundDatabase } from './database-of';

type OpenDatabase = Extract<FoundDatabase, { readonly ok: true }>;

/** What a command came to: a sentence for stdout, or one for stderr and exit code 1. */
export type CommandResult = { readonly ok: boolean; readonly sentence: string };

/**
 * The life of a command that needs the database for a moment: finds it as the environment says, does its work, and lets go.
 * Everything that goes wrong ends with sentences on stderr and exit code 1.
 */
export function runCommand(work: (database: OpenDatabase, config: Config) => Promise<CommandResult>): void {
  const fail = (sentence: string): void => {
    process.stderr.write(`${sentence}\n`);
    process.exitCode = 1;
  };
  const run = async (): Promise<void> => {
    const read = readConfig(process.env);
    if (!read.ok) return fail(read.problems.join('\n'));
    const database = await databaseOf(read.config);
    if (!database.ok) return fail(database.problem);
    try {
      const { ok, sentence } = await work(database, read.config);
      if (ok) process.stdout.write(`${sentence}\n`);
      else fail(sentence);
    } finally {
      await database.stop();
    }
  };
  run().catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
}
