import { unitFromFile, type UnitFacts, type UnitFactsFile, type Verdict } from '../../fit-rules';
import type { HeldInstall, HeldUnit, InstallChoice, JudgementRecord, LoosePart } from '../../usecases';
import { arrayText, numbersOf, wordsOf } from '../array-text';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { readDaySet } from '../units/day-set-text';
import { chosen } from './choice-sql';

/** Locks the units in order of id; a fact or a part that changes meanwhile waits, or is waited for. */
export async function lockUnits(db: Db, choice: InstallChoice, zone: string): Promise<readonly number[]> {
  const rows = await db.$queryRaw<{ ids: string | null }[]>`
    SELECT array_agg(id)::text AS ids FROM (${unitsOf(choice, zone)} ORDER BY id FOR NO KEY UPDATE) u`;
  return numbersOf(rows[0]!.ids) as number[];
}

function unitsOf(choice: InstallChoice, zone: string): Prisma.Sql {
  // By their ids: what is joined to a table of thousands of places is sought by reading every unit of the shop.
  const named = (ids: readonly number[]) => Prisma.sql`SELECT id FROM unit WHERE id = ANY(${arrayText(ids)}::int[])`;
  if ('unitIds' in choice) return named(choice.unitIds);
  if ('places' in choice) return named([...new Set(choice.places.map(({ unitId }) => unitId))]);
  const { tables, from, where } = chosen(choice, zone);
  return Prisma.sql`${tables} wanted AS (SELECT DISTINCT i.unit_id FROM ${from} WHERE ${where})
    SELECT id FROM unit WHERE id IN (SELECT unit_id FROM wanted)`;
}

/** Columns of installs, each as one text; and by their ids what the installs share, and what only few have. */
interface Answer {
  readonly unitIds: string | null;
  readonly positionIds: string | null;
  readonly places: string | null;
  readonly ticketIds: string | null;
  readonly partIds: string | null;
  readonly fittedOn: string | null;
  readonly verdicts: string | null;
  readonly revisions: string | null;
  readonly judgementIds: string | null;
  readonly units: string | null;
  readonly positions: string | null;
  readonly tickets: string | null;
  readonly parts: string | null;
  readonly judgements: string | null;
  readonly unusual: string | null;
}

/** A row of JSON, as a tuple: the id, then what is known by it. */
type UnitTuple = readonly [
  id: number,
  ownerId: number,
  model: string | null,
  options: Record<string, boolean>,
  serialScheme: string | null,
  serialKey: string | null,
  built: string,
  openTicketId: number | null,
];
type PositionTuple = readonly [id: number, code: string, line: string];
type UnusualTuple = readonly [
  unitId: number,
  positionId: number,
  place: number,
  candidates: readonly string[],
  loose: LoosePart | null,
  askedUnit: AskedUnit | null,
  judgement: OldRecord | null,
];

/** As the database keeps it when the facts of the unit change. */
interface AskedUnit {
  readonly model: string | null;
  readonly options: Record<string, boolean>;
  readonly serialScheme: string | null;
  readonly serialKey: string | null;
  readonly built: string;
}

/** Kept in the install itself, with the whole question, before installs shared their judgements. */
type OldRecord = JudgementRecord & { readonly asked?: { readonly unit: UnitFactsFile } };

/**
 * The installs with the facts of their units, in order of unit, position and place. What many of them share is read once,
 * and looked up behind a fence: how many installs there are is guessed too high, and whole tables would be read. Each
 * column comes as one text: row by row through the client, thousands of them cost more than judging them.
 */
export async function readHeld(db: Db, choice: InstallChoice, zone: string): Promise<readonly HeldInstall[]> {
  const { tables, from, where } = chosen(choice, zone);
  const rows = await db.$queryRaw<Answer[]>`
    ${tables} held AS MATERIALIZED (
      SELECT i.* FROM ${from} WHERE ${where} ORDER BY i.unit_id, i.position_id, i.place)
    SELECT array_agg(unit_id)::text AS "unitIds", array_agg(position_id)::text AS "positionIds",
           array_agg(place)::text AS places, array_agg(ticket_id)::text AS "ticketIds", array_agg(part_id)::text AS "partIds",
           array_agg(fitted_on)::text AS "fittedOn", array_agg(verdict)::text AS verdicts,
           array_agg(judged_revision)::text AS revisions, array_agg(judgement_id)::text AS "judgementIds",
           (SELECT json_agg(json_build_array(u.id, u.owner_id, u.model, u.options, u.serial_scheme, u.serial_key,
                                             u.built::text, o.id))::text
            FROM (SELECT DISTINCT unit_id FROM held) d
            JOIN LATERAL (SELECT u.*, (SELECT m.number FROM model m WHERE m.id = u.model_id) AS model
                          FROM unit u WHERE u.id = d.unit_id OFFSET 0) u ON TRUE
            LEFT JOIN LATERAL (SELECT o.id FROM ticket o WHERE o.unit_id = d.unit_id AND o.closed_at IS NULL OFFSET 0) o
              ON TRUE) AS units,
           (SELECT json_agg(json_build_array(p.id, p.code, l.code))::text
            FROM position p JOIN product_line l ON l.id = p.line_id
            WHERE p.id IN (SELECT position_id FROM held)) AS positions,
           (SELECT json_agg(json_build_array(t.id, (t.closed_at AT TIME ZONE ${zone}::text)::date - DATE '1970-01-01'))::text
            FROM (SELECT DISTINCT ticket_id FROM held) d
            JOIN LATERAL (SELECT t.* FROM ticket t WHERE t.id = d.ticket_id OFFSET 0) t ON TRUE) AS tickets,
           (SELECT json_agg(json_build_array(p.id, p.key))::text
            FROM (SELECT DISTINCT part_id FROM held) d
            JOIN LATERAL (SELECT p.* FROM part p WHERE p.id = d.part_id OFFSET 0) p ON TRUE) AS parts,
           (SELECT json_agg(json_build_array(j.id, j.body))::text
            FROM (SELECT DISTINCT judgement_id FROM held) d
            JOIN LATERAL (SELECT j.* FROM judgement j WHERE j.id = d.judgement_id OFFSET 0) j ON TRUE) AS judgements,
           (SELECT json_agg(json_build_array(
                     i.unit_id, i.position_id, i.place,
                     ARRAY(SELECT key FROM part WHERE id = ANY(i.candidates) ORDER BY key),
                     CASE WHEN k.id IS NOT NULL THEN jsonb_build_object(
                       'pickId', k.id, 'purpose', k.purpose, 'quantity', k.quantity, 'given', k.state = 'given') END,
                     i.asked_unit, i.judgement))::text
            FROM held i LEFT JOIN pick k ON i.place < 0 AND k.id = -i.place
            WHERE i.part_id IS NULL OR i.place < 0 OR i.asked_unit IS NOT NULL OR i.judgement IS NOT NULL) AS unusual
    FROM held`;
  return new HeldRows(rows[0]!).installs();
}

/** Puts the columns together. Rows of one unit share its facts on a line, and rows of one judgement share that. */
class HeldRows {
  private readonly units: ReadonlyMap<number, UnitTuple>;
  private readonly positions: ReadonlyMap<number, PositionTuple>;
  private readonly tickets: ReadonlyMap<number, number | null>;
  private readonly parts: ReadonlyMap<number, readonly string[]>;
  private readonly judgements: ReadonlyMap<number, JudgementRecord>;
  private readonly unusual: ReadonlyMap<string, UnusualTuple>;

  constructor(private readonly answer: Answer) {
    this.units = byFirst(tuplesOf<UnitTuple>(answer.units));
    this.positions = byFirst(tuplesOf<PositionTuple>(answer.positions));
    this.tickets = new Map(tuplesOf<readonly [number, number | null]>(answer.tickets));
    this.parts = new Map(tuplesOf<readonly [number, string]>(answer.parts).map(([id, key]) => [id, [key]]));
    this.judgements = new Map(tuplesOf<readonly [number, JudgementRecord]>(answer.judgements));
    const unusual = tuplesOf<UnusualTuple>(answer.unusual);
    this.unusual = new Map(unusual.map((one) => [`${one[0]} ${one[1]} ${one[2]}`, one]));
  }

  installs(): readonly HeldInstall[] {
    const { answer } = this;
    const [places, ticketIds, partIds] = [answer.places, answer.ticketIds, answer.partIds].map(numbersOf);
    const [fittedOn, revisions, judgementIds] = [answer.fittedOn, answer.revisions, answer.judgementIds].map(numbersOf);
    const positionIds = numbersOf(answer.positionIds) as number[];
    const verdicts = wordsOf(answer.verdicts) as (Verdict | null)[];
    let unit: HeldUnit | null = null;
    return (numbersOf(answer.unitIds) as number[]).map((unitId, n) => {
      const positionId = positionIds[n]!;
      const [, position, line] = this.positions.get(positionId)!;
      if (unit === null || unit.id !== unitId || unit.facts.line !== line) unit = unitOf(this.units.get(unitId)!, line);
      const [place, partId] = [places![n]!, partIds![n]!];
      const unusual = this.unusual.size === 0 ? undefined : this.unusual.get(`${unitId} ${positionId} ${place}`);
      const ticketId = ticketIds![n]!;
      return {
        unit,
        positionId,
        position,
        place,
        ticketId,
        partId,
        parts: partId === null ? unusual![3] : this.parts.get(partId)!,
        fittedOn: fittedOn![n]!,
        verdict: verdicts[n]!,
        ...this.keptOf(judgementIds![n]!, unit.facts, unusual),
        judgedRevision: revisions![n]!,
        closedOn: this.tickets.get(ticketId)!,
        loose: unusual?.[4] ?? null,
      };
    });
  }

  private keptOf(
    id: number | null,
    facts: UnitFacts,
    unusual: UnusualTuple | undefined,
  ): Pick<HeldInstall, 'judgement' | 'judgedAs'> {
    const old = unusual?.[6] ?? null;
    if (old !== null) return { judgement: old, judgedAs: old.asked ? unitFromFile(old.asked.unit) : null };
    if (id === null) return { judgement: null, judgedAs: null };
    const asked = unusual?.[5] ?? null;
    return { judgement: this.judgements.get(id)!, judgedAs: asked === null ? facts : { ...facts, ...factsOf(asked) } };
  }
}

function unitOf(
  [id, ownerId, model, options, serialScheme, serialKey, built, openTicketId]: UnitTuple,
  line: string,
): HeldUnit {
  return {
    id,
    ownerId,
    openTicketId,
    facts: { line, ...factsOf({ model, options, serialScheme, serialKey, built }) },
  };
}

function factsOf({ model, options, serialScheme, serialKey, built }: AskedUnit): Omit<UnitFacts, 'line'> {
  const serial = serialScheme === null ? null : { scheme: serialScheme, key: serialKey };
  return { model, options, serial, built: readDaySet(built) };
}

const tuplesOf = <T>(text: string | null): readonly T[] => (text === null ? [] : (JSON.parse(text) as T[]));

const byFirst = <T extends readonly [number, ...unknown[]]>(all: readonly T[]): ReadonlyMap<number, T> =>
  new Map(all.map((one) => [one[0], one]));
