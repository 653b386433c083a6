import { readConfig } from '../../../libs/config';
import { openStore, prepareDatabase } from '../../../libs/store';
import { startApi } from './start-api';

const say = (text: string) => process.stderr.write(`${text}\n`);

/** The API alone, on the database that DATABASE_URL names; brings that database up to date first. */
async function main(): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) return fail(read.problems.join('\n'));
  const { config } = read;
  const { databaseUrl, migrationDatabaseUrl } = config;
  if (!databaseUrl) return fail('DATABASE_URL is not set, but the API alone needs the address of a PostgreSQL.');
  const prepared = await prepareDatabase({ databaseUrl, migrationDatabaseUrl });
  if (!prepared.ok) return fail(prepared.problem);
  const store = openStore({ url: databaseUrl, timeZone: config.timeZone });
  const api = await startApi({ config, store });
  for (const sentence of [`The API answers at ${api.url}`, ...api.notices]) say(sentence);
  const stop = () => void api.close().then(() => store.close());
  process.once('SIGINT', stop).once('SIGTERM', stop);
}

function fail(sentence: string): void {
  say(sentence);
  process.exitCode = 1;
}

main().catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
