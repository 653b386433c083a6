import { Client } from 'pg';

const OLDEST = 14;

/** Why a given PostgreSQL cannot be used. */
export type ServerProblem =
  { readonly code: 'unreachable'; readonly reason: string } | { readonly code: 'too-old'; readonly version: string };

/** Asks the server behind an address whether it answers and is new enough (PostgreSQL 14); undefined when all is well. */
export async function checkServer(databaseUrl: string): Promise<ServerProblem | undefined> {
  const client = new Client({ connectionString: databaseUrl, connectionTimeoutMillis: 10_000 });
  client.on('error', () => undefined);
  try {
    await client.connect();
    const { rows } = await client.query<{ version: string }>(`SELECT current_setting('server_version') AS version`);
    const version = rows[0]!.version;
    return Number.parseInt(version, 10) < OLDEST ? { code: 'too-old', version } : undefined;
  } catch (error) {
    return { code: 'unreachable', reason: reasonOf(error as Error & { code?: string }) };
  } finally {
    await client.end().catch(() => undefined);
  }
}

/** A refused connection to a name with several addresses carries no text of its own, only a code. */
const reasonOf = (error: Error & { code?: string }): string => error.message || error.code || 'no answer';

/** The problem in one sentence. */
export function serverProblemSentence(problem: ServerProblem, variable: string): string {
  return problem.code === 'too-old'
    ? `${variable} leads to PostgreSQL ${problem.version}, but ${OLDEST} or newer is needed.`
    : `The PostgreSQL of ${variable} cannot be used (${problem.reason}).`;
}
