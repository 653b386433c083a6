import type { Pool } from 'pg';

export const STAGES = ['intake', 'inspection', 'parts-selection', 'repair', 'handover'] as const;

/** A bulletin that asks for the other belt in the one unit of its ticket. */
export interface ModelPaper {
  readonly id: number;
  version: number;
  state: 'draft' | 'published' | 'withdrawn';
  /** What came of it: a flag while the unit is in the shop, a call once it is out; none before it was published. */
  follows: { readonly kind: 'flag' | 'callback'; state: string; why: string } | null;
}

export interface ModelTicket {
  readonly id: number;
  readonly serial: string;
  version: number;
  stage: (typeof STAGES)[number];
  complaint: string;
  out: boolean;
  /** `found 1 HOLM/70412B sound` and the like. */
  readonly records: string[];
  pick: 'picked' | 'fitted' | null;
  paper: ModelPaper | null;
}

/** What must be in the database after what was answered; nothing that was refused is in it. */
export interface ShopModel {
  readonly tickets: ModelTicket[];
  setting: { version: number; lookBackMonths: number };
}

export const inStage = (ticket: ModelTicket): number => STAGES.indexOf(ticket.stage);

/** A ticket can go on while no paper in force speaks against its belt. */
export const goesOn = ({ out, paper }: ModelTicket): boolean => !out && paper?.state !== 'published';

/** The model as lines of text, behind the tickets that were there before. */
export function picture({ tickets, setting }: ShopModel, past: readonly ModelTicket[]): readonly string[] {
  return [
    `look back ${setting.lookBackMonths}`,
    ...[...past, ...tickets].map(({ id, stage, complaint, version, out, records, pick, paper }) =>
      [
        `${id} ${out ? 'out' : stage} v${version} ${complaint}`,
        [...records].sort().join(', '),
        pick ?? 'nothing',
        paper ? `${paper.state} v${paper.version}` : 'no paper',
        paper?.follows ? `${paper.follows.kind} ${paper.follows.state} ${paper.follows.why}`.trim() : 'nothing follows',
      ].join(' | '),
    ),
  ];
}

/** The same lines as the database has them, of every ticket in it. */
export async function pictureIn(pool: Pool): Promise<readonly string[]> {
  const setting = await pool.query<{ value: number }>(`SELECT value FROM setting WHERE key = 'look-back-months'`);
  const { rows } = await pool.query<{ text: string }>(
    `SELECT concat_ws(' | ',
       t.id || ' ' || CASE WHEN t.handed_over THEN 'out' ELSE t.stage END || ' v' || t.version || ' ' || t.complaint,
       (SELECT COALESCE(string_agg(r.text, ', ' ORDER BY r.text COLLATE "C"), '') FROM (
          SELECT p.side || ' ' || n.code || ' ' || p.place || ' ' || q.key || COALESCE(' ' || p.condition, '') AS text
          FROM place_record p JOIN position n ON n.id = p.position_id JOIN part q ON q.id = p.part_id
          WHERE p.ticket_id = t.id) r),
       COALESCE((SELECT string_agg(k.state, ', ') FROM pick k WHERE k.ticket_id = t.id), 'nothing'),
       COALESCE((SELECT string_agg(s.state || ' v' || s.version, ', ') FROM source s WHERE s.number = 'SB ' || t.id), 'no paper'),
       COALESCE((SELECT string_agg(f.text, ', ') FROM (
          SELECT trim('flag ' || state || ' ' || CASE WHEN state = 'accepted' THEN COALESCE(decision_why, '') ELSE '' END) AS text
          FROM flag WHERE ticket_id = t.id
          UNION ALL
          SELECT trim('callback ' || c.state || ' ' || CASE WHEN c.state = 'settled' THEN COALESCE(c.closed_why, '') ELSE '' END)
          FROM callback c WHERE c.unit_id = t.unit_id) f), 'nothing follows')) AS text
     FROM ticket t ORDER BY t.id`,
  );
  return [`look back ${setting.rows[0]?.value ?? 'never settled'}`, ...rows.map(({ text }) => text)];
}

/** Where two pictures are unlike, a sentence each. */
export function differences(is: readonly string[], wanted: readonly string[]): readonly string[] {
  return Array.from({ length: Math.max(is.length, wanted.length) }, (_, i) => [is[i], wanted[i]])
    .filter(([one, other]) => one !== other)
    .map(([one, other]) => `is '${one ?? 'not there'}', must be '${other ?? 'not there'}'`);
}
