import { Pool } from 'pg';
import { day, formatDay } from '../../../libs/day';
import type { FitRuleFile } from '../../../libs/fit-rules';
import { openStore, type OpenStore } from '../../../libs/store';
import { applyMigrations } from '../../../libs/store/migrate';
import { embeddedProblemSentence, startEmbedded, type EmbeddedServer } from '../../../libs/store/embedded';
import { folderInRun, noteProcess } from '../../../libs/testing';
import { rule } from '../../recheck/small-shop';

export const LINES = 50;
export const POSITIONS = 12;
const PIECES = 6;
const FIRST = day('2005-01-01');
export const LAST = day('2025-01-01');
export const SPAN = LAST - FIRST;
/** At the last three positions the rules ask for something else than the build date, and there are two of them. */
const BY_DATE = POSITIONS - 3;
/** Of so many units one is in the shop. */
const ONE_IN_SHOP = 500;
/** Of so many installs one has not been judged before, and holds another part than is required. */
const ONE_IN = 1_000;

export const lineCode = (line: number): string => `line-${line}`;
export const positionCode = (position: number): string => `position-${position}`;
export const builtAt = (share: number): string => formatDay(FIRST + Math.round(SPAN * share));

/**
 * A shop of very many installs on a crash-safe PostgreSQL of its own: fifty lines of twelve positions, nine of them with
 * six rules by build date, and one each with two rules by an option, by serial number and by model. Every unit bears a
 * serial number and tells its option. All but one in a thousand hold what is required and were judged so; one unit in
 * five hundred is in the shop.
 */
export class BigShop {
  private constructor(
    private readonly server: EmbeddedServer,
    readonly pool: Pool,
    readonly store: OpenStore,
    readonly rows: number,
  ) {}

  get url(): string {
    return this.server.url;
  }

  static async open(rows: number): Promise<BigShop> {
    const result = await startEmbedded({ dataFolder: folderInRun('bench') });
    if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
    noteProcess(result.server.pid);
    const { url } = result.server;
    await applyMigrations(url);
    const shop = new BigShop(
      result.server,
      new Pool({ connectionString: url, max: 3 }),
      openStore({ url, sight: 'all' }),
      rows,
    );
    await shop.fill();
    return shop;
  }

  async close(): Promise<void> {
    await this.store.close();
    await this.pool.end();
    await this.server.stop();
  }

  private async fill(): Promise<void> {
    const units = Math.ceil(this.rows / POSITIONS);
    await this.pool.query(`
      INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop');
      INSERT INTO person (id, login, name, role, location_id) VALUES (1, 'mara', 'Mara Venn', 'manager', 1);
      INSERT INTO maker (id, code, name, number_rules) VALUES (1, 'HOLM', 'Holmgard', '{"makerCode":"HOLM","noise":"-","packMarks":[],"trailingLetterIsRevision":false}');
      INSERT INTO product_line (id, code, maker_id, name, kind, produced_from)
        SELECT n + 1, 'line-' || n, 1, 'Line ' || n, 'tiller', '2005-01-01' FROM generate_series(0, ${LINES - 1}) n;
      INSERT INTO model (id, line_id, number, name)
        SELECT 2 * n + m + 1, n + 1, 'model-' || m, 'Model ' || m FROM generate_series(0, ${LINES - 1}) n, generate_series(0, 1) m;
      INSERT INTO position (id, line_id, code, name, assembly, places, place_names, sort_order)
        SELECT n * ${POSITIONS} + p + 1, n + 1, 'position-' || p, 'Position ' || p, 'Shaft', 1, '{only}', p
        FROM generate_series(0, ${LINES - 1}) n, generate_series(0, ${POSITIONS - 1}) p;
      INSERT INTO part (id, key, maker_id, number, canonical, name)
        SELECT n + 1, 'HOLM/P' || n, 1, 'P' || n, 'P' || n, 'Part ' || n FROM generate_series(0, ${LINES * POSITIONS * PIECES}) n;
      INSERT INTO part (id, key, maker_id, number, canonical, name) VALUES (1000000, 'HOLM/NEW', 1, 'NEW', 'NEW', 'New part');
      INSERT INTO owner (id, location_id, name, phone, consent) VALUES (1, 1, 'Ole Brand', '555 0101', true);
      INSERT INTO source (key, kind, publisher, number, title, issued, received, state, published_at)
        VALUES ('PL-1', 'parts-list', 'Holmgard', 'PL-1', 'Parts list', '2005-01-01', '2005-01-01', 'published', '2005-01-01');
      INSERT INTO unit (id, owner_id, location_id, line_id, model_id, serial_scheme, serial_key, options, built, built_from, built_to)
        SELECT n, 1, 1, line + 1, 2 * line + 1 + model, 'HOLM', lpad(n::text, 9, '0'),
               jsonb_build_object('electric-start', n % 3 = 0), int4multirange(int4range(b, b + 1)), b, b + 1
        FROM (SELECT n, n % ${LINES} AS line, (n / ${LINES}) % 2 AS model,
                     ${FIRST} + (n::bigint * 7919 % ${SPAN})::int AS b FROM generate_series(1, ${units}) n) u;
      INSERT INTO ticket (id, number, location_id, unit_id, owner_id, closed_at, handed_over)
        SELECT n, 'T-' || n, 1, n, 1, now() - INTERVAL '100 days', TRUE FROM generate_series(1, ${units}) n;
      INSERT INTO ticket (id, number, location_id, unit_id, owner_id)
        SELECT ${units} + n, 'T-' || ${units} + n, 1, n, 1 FROM generate_series(${ONE_IN_SHOP}, ${units}, ${ONE_IN_SHOP}) n;
      INSERT INTO install (unit_id, location_id, position_id, place, record_id, ticket_id, line_id, part_id, built_from, built_to, verdict, judgement, judged_revision)
        SELECT u.id, 1, (u.line_id - 1) * ${POSITIONS} + p + 1, 1, 0, u.id, u.line_id,
               CASE WHEN odd THEN 1 + ${LINES * POSITIONS * PIECES} ELSE 1 + ((u.line_id - 1) * ${POSITIONS} + p) * ${PIECES} +
                 CASE p - ${BY_DATE} WHEN 0 THEN (u.id % 3 = 0)::int WHEN 1 THEN (u.id >= ${Math.round(units / 2)})::int
                                     WHEN 2 THEN (u.model_id - 1) % 2 ELSE piece END END,
               u.built_from, u.built_to, CASE WHEN odd THEN NULL ELSE 'right' END, CASE WHEN odd THEN NULL ELSE '{}'::jsonb END, 1
        FROM (SELECT *, (built_from - ${FIRST}) * ${PIECES} / ${SPAN} AS piece FROM unit) u, generate_series(0, ${POSITIONS - 1}) p,
             LATERAL (SELECT (u.id * ${POSITIONS} + p) % ${ONE_IN} = 0 AS odd) o
        ORDER BY u.id, p;
      SELECT setval('unit_id_seq', ${units}), setval('ticket_id_seq', 2 * ${units}), setval('person_id_seq', 1);
    `);
    await this.store.transaction(async (tx) => {
      const { revision } = await tx.rulebook.addRevision({ cause: 'seed', sourceId: null, personId: null });
      await tx.rulebook.open(rules(units), revision);
    });
    await this.pool.query('VACUUM ANALYZE');
  }
}

/** Rule k of a position requires part k of it. */
function rules(units: number): readonly FitRuleFile[] {
  const known = { from: '2005-01-01T00:00:00.000Z', to: null };
  const inForce = { from: '2005-01-01', to: null };
  return Array.from({ length: LINES * POSITIONS * PIECES }, (_, n) => n)
    .filter(isRule)
    .map((n) => {
      const [place, piece] = [Math.floor(n / PIECES), n % PIECES];
      const [line, position] = [Math.floor(place / POSITIONS), place % POSITIONS];
      const about = { line: lineCode(line), positions: [positionCode(position)], required: `HOLM/P${n}` };
      return rule(`FR-${n}`, { ...about, known, inForce, action: 'call-back', ...askedBy(position, piece, units) });
    });
}

const isRule = (n: number): boolean => Math.floor(n / PIECES) % POSITIONS < BY_DATE || n % PIECES < 2;

/** What a rule asks of a unit. By build date: the days d with floor((d - FIRST) * PIECES / SPAN) = piece. */
function askedBy(position: number, piece: number, units: number): Partial<FitRuleFile> {
  if (position === BY_DATE) return { options: [{ option: 'electric-start', fitted: piece === 1 }] };
  if (position === BY_DATE + 2) return { models: [`model-${piece}`] };
  if (position === BY_DATE + 1) {
    const cut = String(Math.round(units / 2)).padStart(9, '0');
    return { serials: { scheme: 'HOLM', from: piece === 0 ? null : cut, to: piece === 0 ? cut : null } };
  }
  const cut = (k: number) => formatDay(FIRST + Math.ceil((SPAN * k) / PIECES));
  return { built: { from: piece === 0 ? null : cut(piece), to: piece === PIECES - 1 ? null : cut(piece + 1) } };
}
