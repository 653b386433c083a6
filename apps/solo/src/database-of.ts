import { type Config } from '../../../libs/config';
import { embeddedProblemSentence, runningServer, startEmbedded } from '../../../libs/store/embedded';

export type FoundDatabase =
  | {
      readonly ok: true;
      /** As the owner of the tables signs in. */
      readonly url: string;
      /** As the programs sign in; undefined for our own server that another program runs. */
      readonly appUrl: string | undefined;
      readonly stop: () => Promise<void>;
    }
  | { readonly ok: false; readonly problem: string };

/** The given PostgreSQL; or our own, as it runs, else started for the length of this. */
export async function databaseOf({ databaseUrl, migrationDatabaseUrl, dataFolder }: Config): Promise<FoundDatabase> {
  const url = migrationDatabaseUrl ?? databaseUrl ?? runningServer(dataFolder);
  if (url !== undefined) return { ok: true, url, appUrl: databaseUrl, stop: () => Promise.resolve() };
  const result = await startEmbedded({ dataFolder });
  if (!result.ok) return { ok: false, problem: embeddedProblemSentence(result.problem) };
  const { server } = result;
  return { ok: true, url: server.url, appUrl: server.appUrl, stop: () => server.stop() };
}
