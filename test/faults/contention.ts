import type { House } from './house';

/** Codes with which PostgreSQL ends one of two transactions that got in each other's way (its manual, appendix A). */
export const CODES = ['40001', '40P01'] as const;
/** Where the statements stand that are made to fail: single ones, and those early and late in a transaction. */
const TABLES = [
  'ticket',
  'kept_answer',
  'audit_entry',
  'callback_attempt',
  'callback',
  'verdict_change',
  'recheck_chunk',
];

export type Contended =
  'ticket' | 'kept_answer' | 'audit_entry' | 'callback_attempt' | 'callback' | 'verdict_change' | 'recheck_chunk';

/**
 * Makes the database itself end the next so many statements that write to a table, with a serialization failure or a
 * deadlock. They are counted by a sequence, because a sequence is not rolled back with what failed.
 */
export class Contention {
  private constructor(private readonly house: House) {}

  static async open(house: House): Promise<Contention> {
    await house.pool.query(`
      CREATE SEQUENCE contention_turn;
      CREATE TABLE contention (place TEXT, code TEXT, times INT);
      CREATE FUNCTION contend() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = public AS $$
      DECLARE armed contention%ROWTYPE;
      BEGIN
        SELECT * INTO armed FROM contention WHERE place = TG_TABLE_NAME;
        IF FOUND AND nextval('contention_turn') <= armed.times THEN
          RAISE EXCEPTION 'made to fail' USING ERRCODE = armed.code;
        END IF;
        RETURN NULL;
      END $$;
      ${TABLES.map((table) => `CREATE TRIGGER contended BEFORE INSERT OR UPDATE ON ${table} FOR EACH STATEMENT EXECUTE FUNCTION contend();`).join('\n')}`);
    return new Contention(house);
  }

  /** The next `times` statements that write to the table fail. */
  async arm(place: Contended, code: string, times: number): Promise<void> {
    await this.house.pool.query('DELETE FROM contention');
    await this.house.pool.query(`SELECT setval('contention_turn', 1, FALSE)`);
    await this.house.pool.query('INSERT INTO contention VALUES ($1, $2, $3)', [place, code, times]);
  }

  /** How many have failed since it was armed. */
  async failed(): Promise<number> {
    const { rows } = await this.house.pool.query<{ n: number }>(
      `SELECT least((SELECT sum(times) FROM contention), CASE WHEN is_called THEN last_value ELSE 0 END)::int AS n
       FROM contention_turn`,
    );
    return rows[0]!.n;
  }

  async disarm(): Promise<void> {
    await this.house.pool.query('DELETE FROM contention');
  }

  async close(): Promise<void> {
    await this.house.pool.query(
      `DROP FUNCTION contend() CASCADE; DROP TABLE contention; DROP SEQUENCE contention_turn;`,
    );
  }
}
