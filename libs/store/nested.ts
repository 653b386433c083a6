import { Prisma } from './generated/client';

/**
 * Several questions asked as one: each stands as a column of the whole, and comes back as the rows it would have answered
 * alone. A round trip costs more than most questions do. What a row holds has to read the same from JSON: no instants,
 * big integers, decimals or bytes as such. Rows keep the order that the question asks for.
 */
export const rowsOf = (question: Prisma.Sql): Prisma.Sql =>
  Prisma.sql`(SELECT coalesce(json_agg(q), '[]') FROM (${question}) q)`;

/** The same for a question that answers one row; null where it answers none. */
export const rowOf = (question: Prisma.Sql): Prisma.Sql => Prisma.sql`(SELECT to_json(q) FROM (${question}) q)`;

/** An id as it is given, or the column that holds it in the question around. */
export type Id = number | Prisma.Sql;
