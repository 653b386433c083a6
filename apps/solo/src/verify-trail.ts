import { readConfig, type Config } from '../../../libs/config';
import { embeddedProblemSentence, runningServer, startEmbedded } from '../../../libs/store/embedded';
import { verifyTrailAt } from '../../../libs/store';

/**
 * `npm run audit:verify [-- head]`: walks the whole trail of changes and says whether every row is as it was written.
 * With a head written down earlier it must still be in the chain. Ends with code 1 when something is wrong.
 */
async function main(expect: string | undefined): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) return fail(read.problems.join('\n'));
  const { config } = read;
  const database = await databaseOf(config);
  if (!database.ok) return fail(database.problem);
  try {
    const { rows, head, fault } = await verifyTrailAt(database.url, expect);
    if (fault) fail(`Row ${fault.id} of the trail is not as it was written: ${fault.why}.`);
    else process.stdout.write(`The trail is whole: ${rows} rows, head ${head}.\n`);
  } finally {
    await database.stop();
  }
}

type Database =
  | { readonly ok: true; readonly url: string; readonly stop: () => Promise<void> }
  | { readonly ok: false; readonly problem: string };

/** The given PostgreSQL; or our own, as it runs, else started for the length of this. */
async function databaseOf({ databaseUrl, migrationDatabaseUrl, dataFolder }: Config): Promise<Database> {
  const url = migrationDatabaseUrl ?? databaseUrl ?? runningServer(dataFolder);
  if (url !== undefined) return { ok: true, url, stop: () => Promise.resolve() };
  const result = await startEmbedded({ dataFolder });
  if (!result.ok) return { ok: false, problem: embeddedProblemSentence(result.problem) };
  return { ok: true, url: result.server.url, stop: () => result.server.stop() };
}

function fail(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

main(process.argv[2]).catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
