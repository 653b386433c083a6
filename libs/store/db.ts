import type { Prisma } from './generated/client';

/** What a database action is lent: the client, or the transaction it must stay in. */
export type Db = Pick<Prisma.TransactionClient, '$queryRaw' | '$executeRaw'>;
