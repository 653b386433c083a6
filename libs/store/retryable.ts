/**
 * Failures after which the whole transaction is worth running again. Everything else is a bug or a broken database
 * and is thrown on.
 */
export const RETRYABLE: Readonly<Record<string, string>> = {
  '40001': 'serialization failure: another transaction changed what this one had read',
  '40P01': 'deadlock: the database stopped one of the transactions that waited for each other',
  P2034: 'the same two, as the client names them',
};

/** True when the error, or what caused it, carries a code of {@link RETRYABLE}. */
export function isRetryable(error: unknown): boolean {
  return codesOf(error, 0).some((code) => code in RETRYABLE);
}

/** The client wraps the driver's error; its code sits a few levels down. */
export function codesOf(error: unknown, depth: number): string[] {
  if (typeof error !== 'object' || error === null || depth > 5) return [];
  const { code, originalCode, meta, cause, driverAdapterError } = error as Record<string, unknown>;
  const own = [code, originalCode].filter((one): one is string => typeof one === 'string');
  return [...own, ...[meta, cause, driverAdapterError].flatMap((inner) => codesOf(inner, depth + 1))];
}

/**
 * Codes that say the database is away or dropped the connection (PostgreSQL error classes 08 and 57P, the system's
 * network errors, the client's own names for them).
 */
const OUTAGE =
  /^(08...|57P0[1-3]|53300|E(CONN|PIPE|TIMEDOUT|HOST|NET|NOTFOUND|AI_AGAIN).*|P1001|P1002|P1008|P1017|P2024|P2028)$/;
const CUT_OFF =
  /Connection terminated|connection (was )?closed|Server has closed the connection|timeout exceeded when trying to connect|Can't reach database/i;

/** True when the work failed because the database was not to be reached. */
export function isOutage(error: unknown): boolean {
  return codesOf(error, 0).some((code) => OUTAGE.test(code)) || (error instanceof Error && CUT_OFF.test(error.message));
}
