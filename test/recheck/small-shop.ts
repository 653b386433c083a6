import type { Pool } from 'pg';
import { day, formatDay } from '../../libs/day';
import type { FitRuleFile } from '../../libs/fit-rules';
import { openStore, type OpenStore } from '../../libs/store';
import type { Actor, Clock, Ports } from '../../libs/usecases';

export const TODAY = day('2026-11-20');
export const manager: Actor = { id: 1, name: 'Mara Venn', role: 'manager', locationId: 1 };

/** A clock that stands still until it is moved. */
export class HeldClock implements Clock {
  constructor(private held = TODAY) {}
  now = () => Date.now();
  today = () => this.held;
  moveTo(today: number): void {
    this.held = today;
  }
}

/** A rule on line TL-40 with everything that does not matter left open. */
export function rule(key: string, more: Partial<FitRuleFile>): FitRuleFile {
  return {
    key,
    version: 1,
    line: 'TL-40',
    models: [],
    options: [],
    positions: ['pin'],
    built: { from: null, to: null },
    serials: null,
    inForce: { from: '2026-01-01', to: null },
    known: { from: null, to: null },
    source: 'PL-1',
    required: null,
    allowed: [],
    barred: [],
    action: 'nothing',
    replaces: [],
    ...more,
  };
}

/**
 * A shop of one line with two positions (`pin` with two places, `blade` with one) and the parts HOLM/A, HOLM/B, HOLM/C.
 * Its parts list of 2010 requires HOLM/A at the pin and HOLM/C at the blade.
 */
export class SmallShop {
  readonly clock = new HeldClock();
  private units = 0;

  private constructor(
    readonly pool: Pool,
    readonly store: OpenStore,
  ) {}

  get ports(): Ports {
    return { store: this.store, clock: this.clock };
  }

  static async open(url: string, pool: Pool): Promise<SmallShop> {
    const shop = new SmallShop(pool, openStore({ url, poolSize: 8, sight: 'all' }));
    await pool.query(`
      INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop');
      INSERT INTO person (id, login, name, role, location_id) VALUES (1, 'mara', 'Mara Venn', 'manager', 1);
      INSERT INTO maker (id, code, name, number_rules) VALUES (1, 'HOLM', 'Holmgard', '{"makerCode":"HOLM","noise":"-","packMarks":[],"trailingLetterIsRevision":false}');
      INSERT INTO product_line (id, code, maker_id, name, kind, produced_from) VALUES (1, 'TL-40', 1, 'Tiller 40', 'tiller', '2008-01-01');
      INSERT INTO model (id, line_id, number, name) VALUES (1, 1, '40A', 'Forty');
      INSERT INTO position (id, line_id, code, name, assembly, places, place_names, sort_order) VALUES
        (1, 1, 'pin', 'Shear pin', 'Tine shaft', 2, '{left,right}', 1), (2, 1, 'blade', 'Blade bolt', 'Tine shaft', 1, '{centre}', 2);
      INSERT INTO part (id, key, maker_id, number, canonical, name) VALUES
        (1, 'HOLM/A', 1, 'A', 'A', 'Pin A'), (2, 'HOLM/B', 1, 'B', 'B', 'Pin B'), (3, 'HOLM/C', 1, 'C', 'C', 'Bolt C');
      INSERT INTO owner (id, location_id, name, phone, consent) VALUES (1, 1, 'Ole Brand', '555 0101', true);
      SELECT setval(name::regclass, last) FROM (VALUES ('location_id_seq', 1), ('person_id_seq', 1), ('maker_id_seq', 1), ('product_line_id_seq', 1), ('model_id_seq', 1),
        ('position_id_seq', 2), ('part_id_seq', 3), ('owner_id_seq', 1)) AS s(name, last);
      INSERT INTO source (key, kind, publisher, number, title, issued, received, state, published_at)
        VALUES ('PL-1', 'parts-list', 'Holmgard', 'PL-1', 'Parts list', '2010-01-01', '2010-01-01', 'published', '2010-01-01');
    `);
    const open = { known: { from: '2010-01-01T00:00:00.000Z', to: null }, inForce: { from: '2010-01-01', to: null } };
    await shop.store.transaction(async (tx) => {
      const { revision } = await tx.rulebook.addRevision({ cause: 'seed', sourceId: null, personId: null });
      await tx.rulebook.open(
        [
          rule('FR-PIN', { ...open, required: 'HOLM/A' }),
          rule('FR-BLADE', { ...open, positions: ['blade'], required: 'HOLM/C' }),
        ],
        revision,
      );
    });
    return shop;
  }

  /**
   * A unit with what it holds, as `[position, place, part]`; left on a ticket that closed on `handedOver`, or on one that
   * is open when that is null. Answers unit and ticket.
   */
  async unit(
    holds: readonly (readonly [position: 1 | 2, place: number, part: 1 | 2 | 3])[],
    {
      handedOver,
      built = ['2015-01-01', '2015-06-01'],
    }: { handedOver: string | null; built?: readonly [string, string] },
  ): Promise<{ unitId: number; ticketId: number }> {
    this.units++;
    const [from, to] = built.map(day) as [number, number];
    const unit = await this.one(
      `INSERT INTO unit (owner_id, line_id, model_id, serial, built, built_from, built_to)
       VALUES (1, 1, 1, $1, int4multirange(int4range($2, $3)), $2, $3) RETURNING id`,
      [`S${this.units}`, from, to],
    );
    const ticketId = await this.ticket(unit, handedOver);
    for (const [position, place, part] of holds) await this.hold(unit, ticketId, position, place, part, from, to);
    return { unitId: unit, ticketId };
  }

  async ticket(unitId: number, handedOver: string | null): Promise<number> {
    return this.one(
      `INSERT INTO ticket (number, location_id, unit_id, owner_id, opened_at, closed_at, handed_over)
       VALUES ('T-' || nextval('ticket_id_seq'), 1, $1, 1, COALESCE($2::timestamptz, now()), $2, $2::text IS NOT NULL) RETURNING id`,
      [unitId, handedOver === null ? null : `${handedOver}T12:00:00Z`],
    );
  }

  async hold(
    unit: number,
    ticket: number,
    position: number,
    place: number,
    part: number,
    from: number,
    to: number,
  ): Promise<void> {
    const record = await this.one(
      `INSERT INTO place_record (ticket_id, unit_id, position_id, place, side, part_id) VALUES ($1, $2, $3, $4, 'left', $5) RETURNING id`,
      [ticket, unit, position, place, part],
    );
    await this.pool.query(
      `INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, fitted_on, built_from, built_to)
       VALUES ($1, $2, $3, $4, $5, 1, $6, $7, $8, $9)`,
      [unit, position, place, record, ticket, part, day('2016-05-01'), from, to],
    );
  }

  /** Many units at once, each with HOLM/A in both places of the pin, handed over on the day; answers their ids. */
  async many(count: number, handedOver: string, [since, until]: readonly [string, string]): Promise<readonly number[]> {
    const { rows } = await this.pool.query<{ id: number }>(
      `WITH u AS (
         INSERT INTO unit (owner_id, line_id, model_id, built, built_from, built_to)
         SELECT 1, 1, 1, int4multirange(int4range($3, $4)), $3, $4 FROM generate_series(1, $1) RETURNING id),
       t AS (
         INSERT INTO ticket (number, location_id, unit_id, owner_id, closed_at, handed_over)
         SELECT 'M-' || u.id, 1, u.id, 1, $2::timestamptz, TRUE FROM u RETURNING id, unit_id),
       i AS (
         INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, fitted_on, built_from, built_to)
         SELECT t.unit_id, 1, place, 0, t.id, 1, 1, $5, $3, $4 FROM t, generate_series(1, 2) place)
       SELECT id FROM u ORDER BY id`,
      [count, `${handedOver}T12:00:00Z`, day(since), day(until), day('2016-05-01')],
    );
    return rows.map(({ id }) => id);
  }

  /** How often each key of a callback's reason stands; "once" is what every value must be. */
  async reasonCounts(): Promise<{ readonly reasons: number; readonly units: number; readonly most: number }> {
    const { rows } = await this.pool.query<{ reasons: number; units: number; most: number }>(
      `SELECT COALESCE(sum(n), 0)::int AS reasons, count(DISTINCT unit_id)::int AS units, COALESCE(max(n), 0)::int AS most
       FROM (SELECT c.unit_id, r.source_id, r.position_id, r.place, count(*) AS n
             FROM callback c JOIN callback_reason r ON r.callback_id = c.id GROUP BY 1, 2, 3, 4) one`,
    );
    return rows[0]!;
  }

  /** The open and closed callbacks with their live reasons, as `unit: source position/place action`. */
  async callbacks(): Promise<readonly string[]> {
    const { rows } = await this.pool.query<{ text: string }>(
      `SELECT c.unit_id || ' ' || c.state || CASE WHEN c.urgent THEN ' urgent' ELSE '' END || ': ' ||
              COALESCE(string_agg(s.number || ' ' || r.position_id || '/' || r.place || ' ' || r.action, ', ' ORDER BY s.number, r.position_id, r.place)
                       FILTER (WHERE r.withdrawn_at IS NULL), 'nothing') AS text
       FROM callback c LEFT JOIN callback_reason r ON r.callback_id = c.id LEFT JOIN source s ON s.id = r.source_id
       GROUP BY c.id ORDER BY c.unit_id, c.id`,
    );
    return rows.map(({ text }) => text);
  }

  async verdicts(unitId: number): Promise<readonly string[]> {
    const { rows } = await this.pool.query<{ text: string }>(
      `SELECT position_id || '/' || place || ' ' || COALESCE(verdict, 'none') AS text FROM install WHERE unit_id = $1 ORDER BY position_id, place`,
      [unitId],
    );
    return rows.map(({ text }) => text);
  }

  async flags(unitId: number): Promise<readonly string[]> {
    const { rows } = await this.pool.query<{ text: string }>(
      `SELECT position_id || '/' || place || ' ' || verdict || ' ' || state AS text FROM flag WHERE unit_id = $1 ORDER BY id`,
      [unitId],
    );
    return rows.map(({ text }) => text);
  }

  private async one(sql: string, values: unknown[]): Promise<number> {
    const { rows } = await this.pool.query<{ id: number }>(sql, values);
    return rows[0]!.id;
  }
}

/** A bulletin's fields for saving, with these rules. */
export function bulletin(
  number: string,
  opens: readonly FitRuleFile[],
  ends: readonly { rule: string; on: string }[] = [],
) {
  return {
    kind: 'service-bulletin' as const,
    publisher: 'Holmgard',
    number,
    title: `Bulletin ${number}`,
    summary: '',
    issued: formatDay(TODAY - 30),
    effective: null,
    received: formatDay(TODAY - 20),
    draft: { opens: opens.map((one) => ({ ...one })), ends: [...ends] },
  };
}
