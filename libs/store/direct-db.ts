import type { Pool } from 'pg';
import { types, type CustomTypesConfig } from 'pg';
import type { Db } from './db';
import { Prisma } from './generated/client';

/** More texts than the store has; those beyond, such as lists of rows of every length, are planned each time they are asked. */
const MOST_PREPARED = 500;

/** From the second time on a question is kept ready, so that what is asked once costs no memory on the server. */
const ASKED_BEFORE = 2;

/**
 * Questions outside of a transaction, put to the driver itself and kept ready on each connection: every page asks some, and
 * the client's way to the driver costs several times what the answer does. Values come back as the client gives them. What
 * changes rows goes the client's way.
 */
export function directDb(pool: Pool, client: Db): Db {
  const prepared = new PreparedTexts();
  return {
    $executeRaw: (query, ...values) => client.$executeRaw(query, ...values),
    async $queryRaw<T>(query: TemplateStringsArray | Prisma.Sql, ...values: unknown[]): Promise<T> {
      const { text, values: given } = query instanceof Prisma.Sql ? query : Prisma.sql(query, ...values);
      const asked = { text, values: given, types: AS_CLIENT };
      const name = prepared.nameOf(text);
      try {
        return (await pool.query({ ...asked, name })).rows as T;
      } catch (error) {
        // A migration changed a table under a plan that was kept.
        if (name === undefined || (error as { code?: string }).code !== PLAN_IS_OLD) throw error;
        return (await pool.query(asked)).rows as T;
      }
    },
  };
}

/** feature_not_supported, of which the server says `cached plan must not change result type`. */
const PLAN_IS_OLD = '0A000';

/** Gives the texts that come again a name each. */
class PreparedTexts {
  private readonly uses = new Map<string, number>();
  private readonly names = new Map<string, string>();

  nameOf(text: string): string | undefined {
    const known = this.names.get(text);
    if (known !== undefined || this.names.size >= MOST_PREPARED) return known;
    const uses = (this.uses.get(text) ?? 0) + 1;
    if (uses < ASKED_BEFORE) {
      if (this.uses.size < MOST_PREPARED) this.uses.set(text, uses);
      return undefined;
    }
    this.uses.delete(text);
    const name = `q${this.names.size}`;
    this.names.set(text, name);
    return name;
  }
}

const utc = (text: string): Date => new Date(`${text.replace(' ', 'T')}Z`);
const day = (text: string): Date => new Date(`${text}T00:00:00Z`);
const decimal = (text: string) => new Prisma.Decimal(text);

/** Types by their number in pg_type where the client's reading is not the driver's: int8, numeric, date, timestamp. */
const OTHERWISE: Readonly<Record<number, (text: string) => unknown>> = {
  20: BigInt,
  1700: decimal,
  1082: day,
  1114: utc,
};

const AS_CLIENT: CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary'): ((value: string) => unknown) =>
    OTHERWISE[oid] ?? (types.getTypeParser(oid, format) as (value: string) => unknown),
};
