import type { SheetKind } from '../../sheets';
import type { Db } from '../db';

/** What stands where a person's name, or words about the person, stood. */
const ERASED = 'erased';

/** Kinds of spreadsheet that name people or repeat what they said. */
const KINDS_WITH_PEOPLE: readonly SheetKind[] = ['owners', 'tickets'];

/**
 * Takes out of the database what names or reaches the owner: the row's own fields, who authorised work, what was noted
 * about calls, e-mails, captions of photos (in the ticket's history too), answers that are kept for repeats, what
 * is being typed at the intake, and the spreadsheets of owners and tickets that are kept for a day, whoever brought them. The trail never held these. Machines, tickets, parts, verdicts and the pictures themselves stay.
 */
export async function eraseOwner(db: Db, ownerId: number): Promise<void> {
  await forgetAnswers(db, ownerId);
  await db.$executeRaw`
    UPDATE ticket SET authorisation = authorisation || jsonb_build_object('by', ${ERASED}::text), version = version + 1
    WHERE owner_id = ${ownerId}::int AND authorisation IS NOT NULL`;
  await db.$executeRaw`
    UPDATE ticket_event e SET data = e.data || jsonb_build_object('by', ${ERASED}::text)
    FROM ticket t WHERE t.id = e.ticket_id AND t.owner_id = ${ownerId}::int AND e.kind = 'authorised' AND e.data ? 'by'`;
  await db.$executeRaw`
    UPDATE callback_attempt a SET note = ${ERASED}
    FROM callback c WHERE c.id = a.callback_id AND c.owner_id = ${ownerId}::int AND a.note <> ''`;
  await db.$executeRaw`
    UPDATE callback_mail m SET recipient = ${ERASED}, subject = ${ERASED}, text = '', html = '', problem = NULL,
           state = CASE WHEN m.state = 'queued' THEN 'cancelled' ELSE m.state END
    FROM callback c WHERE c.id = m.callback_id AND c.owner_id = ${ownerId}::int`;
  await db.$executeRaw`
    UPDATE photo p SET caption = ${ERASED}
    FROM ticket t WHERE t.id = p.ticket_id AND t.owner_id = ${ownerId}::int AND p.caption <> ''`;
  await db.$executeRaw`
    UPDATE ticket_event e SET data = e.data || jsonb_build_object('caption', ${ERASED}::text)
    FROM ticket t WHERE t.id = e.ticket_id AND t.owner_id = ${ownerId}::int AND e.kind = 'photo' AND e.data ? 'caption'`;
  await db.$executeRaw`DELETE FROM intake_draft`;
  await db.$executeRaw`DELETE FROM sheet WHERE kind = ANY(${[...KINDS_WITH_PEOPLE]}::text[])`;
  await db.$executeRaw`
    UPDATE callback SET state = 'withdrawn', closed_at = now(), closed_why = 'The owner''s data were erased.',
           version = version + 1
    WHERE owner_id = ${ownerId}::int AND state IN ('open', 'booked')`;
  await db.$executeRaw`
    UPDATE owner SET name = ${ERASED}, phone = '', email = '', address = '', erased_at = now(), version = version + 1
    WHERE id = ${ownerId}::int`;
}

/** An answer kept for a day may hold the owner; without it a repeat is refused by the version it names. */
async function forgetAnswers(db: Db, ownerId: number): Promise<void> {
  await db.$executeRaw`
    DELETE FROM kept_answer k USING owner o, LATERAL unnest(ARRAY[o.name, o.phone, o.email, o.address]) AS known(text)
    WHERE o.id = ${ownerId}::int AND length(known.text) >= 3
      AND strpos(k.body::text, btrim(to_jsonb(known.text)::text, '"')) > 0`;
}
