import type { RecordPlaces, TicketView } from '../../contracts';
import { fittedPicks, safetyStillOpen, STAGE_WORDS } from '../../ticket';
import type { Actor } from '../actor';
import { placeName } from '../browse-catalogue/index';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { picksChanged } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { PickRow, Tables } from '../ports/index';
import type { Ports } from '../run';
import { loadTicket, positionById, type WholeTicket } from '../view-ticket/index';
import { findMismatches } from './find-mismatches';
import { readPlaces, type ReadPlace } from './read-places';

/**
 * Records what was found, or what was left, place by place: a mixture is a mixture. In one transaction the records are
 * kept, what the unit holds follows them and is judged at once, picked parts count as fitted, and a part that was left
 * but not picked is flagged.
 */
export function recordPlaces(
  ports: Ports,
  actor: Actor,
  { id, version, ...input }: OnTicket & RecordPlaces,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async (whole, tx) => {
    const notNow = whyNotNow(whole, input.side);
    if (notNow) return refused('wrong-stage', notNow);
    const read = await readPlaces(tx, whole, input);
    if (!read.ok) return read;
    return done({
      events: [{ kind: input.side, data: { what: read.value.map(sayPlace).join('; ') }, personId: actor.id }],
      after: (after) => keep(ports, actor, after, whole, read.value),
    });
  });
}

function whyNotNow({ ticket }: WholeTicket, side: 'found' | 'left'): string | null {
  if (ticket.stage === 'handover') return 'The unit is ready for handover; go back a stage to change what is recorded.';
  if (side === 'found') return null;
  if (ticket.stage !== 'repair')
    return `What was left is recorded in repair, and the ticket is in ${STAGE_WORDS[ticket.stage]}.`;
  if (safetyStillOpen(ticket.safetyChecks).length > 0)
    return 'Tick the safety points first, then record what was left.';
  return null;
}

const sayPlace = ({ position, record, words }: ReadPlace): string =>
  `${position.name} ${placeName(position, record.place)}: ${words}`;

async function keep(
  { clock }: Ports,
  actor: Actor,
  tx: Tables,
  whole: WholeTicket,
  places: readonly ReadPlace[],
): Promise<void> {
  const { ticket, unit } = whole;
  const records = places.map(({ record }) => record);
  await tx.tickets.putRecords(ticket.id, unit.id, records, actor.id);
  const recorded = { ...whole, records: await tx.tickets.records(ticket.id) };
  await tx.tickets.setPickStates(ticket.id, pickStates(recorded));
  await picksChanged(tx, clock, ticket, actor.id);
  const now = await loadTicket(tx, clock, ticket.id, ticket.locationId);
  await tx.flags.putMismatches(ticket.id, unit.id, findMismatches(now!));
}

/** Which picks are in the machine now; a place recorded again with another part puts its pick back on the bench. */
export function pickStates(whole: WholeTicket): { id: number; state: PickRow['state'] }[] {
  const toFit = whole.picks.filter(
    ({ purpose, state }) => purpose === 'fit' && (state === 'picked' || state === 'fitted'),
  );
  const left = whole.records.flatMap(({ side, positionId, partId }) => {
    const position = positionById(whole, positionId);
    return side === 'left' && partId !== null && position ? [{ position: position.code, part: String(partId) }] : [];
  });
  const fitted = fittedPicks(
    toFit.flatMap(({ id, positionId, partId, quantity }) => {
      const position = positionById(whole, positionId ?? 0);
      return position ? [{ id, position: position.code, part: String(partId), quantity }] : [];
    }),
    left,
  );
  return toFit.map(({ id }) => ({ id, state: fitted.has(id) ? 'fitted' : 'picked' }));
}
