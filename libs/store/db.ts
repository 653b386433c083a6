import type { Prisma } from './generated/client';

/** What a database action is lent: the client, the driver, or the transaction it must stay in. */
export interface Db {
  $queryRaw<T = unknown>(query: TemplateStringsArray | Prisma.Sql, ...values: unknown[]): Promise<T>;
  /** How many rows it changed. */
  $executeRaw(query: TemplateStringsArray | Prisma.Sql, ...values: unknown[]): Promise<number>;
}
