import { may, type PickPart, type TicketView } from '../../contracts';
import { sayVerdict, type Judgement } from '../../fit-rules';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { strengthOf } from '../judge-installs';
import { picksChanged, takeFromShelf } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { HeldStock, NewPick, PartRow, PositionRow, Tables } from '../ports/index';
import { readPartTexts } from '../read-part-text/read-part-text';
import { namingOf } from '../rule-on-unit/index';
import type { Ports } from '../run';
import type { WholeTicket } from '../view-ticket/index';
import { positionFor, whereItServes } from './where-it-serves';

/**
 * Takes a part for the ticket: to be fitted in a position, or as a spare for the owner. Taken from the shelf it is
 * reserved there; a part that came from elsewhere says so. A part that is neither right nor allowed where it is meant for
 * needs a manager's exception with a reason.
 */
export function pickPart(
  ports: Ports,
  actor: Actor,
  { id, version, ...input }: OnTicket & PickPart,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async (whole, tx) => {
    const position = positionFor(whole, input);
    if (!position.ok) return position;
    const read = (await readPartTexts(tx, [input.partText], whole.unit.maker?.code ?? null)).get(input.partText)!;
    if (!read.ok) return read;
    const { part } = read.value;
    const { spareFor, judgement } = whereItServes(withPart(whole, part), part, position.value);
    const exception = exceptionFor(withPart(whole, part), actor, input, judgement);
    if (!exception.ok) return exception;
    const stock = await takeFromShelf(tx, whole.ticket, part, input);
    if (!stock.ok) return stock;
    const pick: NewPick = {
      positionId: position.value?.id ?? null,
      partId: part.id,
      quantity: input.quantity,
      purpose: input.purpose,
      priceMinor: input.from === 'owner' ? 0 : (part.priceMinor ?? 0) * input.quantity,
      exceptionReason: exception.value,
      cameFrom: input.from,
      spareFor: spareFor.map((one) => one.id),
    };
    return done({
      events: [{ kind: 'picked', data: eventData(part, input, position.value, exception.value), personId: actor.id }],
      after: (after) => keep(ports, actor, after, whole, pick, stock.value),
    });
  });
}

/** The pick, what it reserves, and the manager's word on it: an exception is his acceptance of the flag it raises. */
async function keep(
  { clock }: Ports,
  actor: Actor,
  tx: Tables,
  { ticket, rulebook }: WholeTicket,
  pick: NewPick,
  stock: HeldStock | null,
): Promise<void> {
  const pickId = await tx.tickets.insertPick(ticket.id, pick, actor.id);
  if (stock) {
    const { id: itemId } = stock;
    const about = { itemId, locationId: ticket.locationId, ticketId: ticket.id, pickId, personId: actor.id };
    await tx.shelf.addMovement({ ...about, kind: 'pick', pieces: 0, reserved: pick.quantity });
  }
  await tx.waits.endFor(ticket.id, [pick.partId]);
  await picksChanged(tx, clock, ticket, actor.id);
  if (pick.exceptionReason === null) return;
  const { revision } = rulebook;
  await tx.flags.acceptPicked(ticket.id, pickId, { why: pick.exceptionReason, personId: actor.id, revision });
}

const withPart = (whole: WholeTicket, part: PartRow): WholeTicket => ({
  ...whole,
  partsByKey: new Map([...whole.partsByKey, [part.key, part]]),
});

/** The reason that is kept as the exception; null where none is needed. */
function exceptionFor(
  whole: WholeTicket,
  actor: Actor,
  { exceptionReason }: PickPart,
  judgement: Judgement | null,
): Outcome<string | null> {
  if (!judgement || judgement.verdict === 'right' || judgement.verdict === 'allowed') return done(null);
  if (exceptionReason === null)
    return refused('conflict', needsManager(judgement, whole), { field: 'exceptionReason' });
  if (!may(actor.role, 'except-part'))
    return refused('not-allowed', 'Only a manager may except a part that is neither right nor allowed.');
  return done(exceptionReason);
}

/** Why not, how far off it is, and whether it goes in at all; the manager who excepts it reads the same. */
function needsManager(judgement: Judgement, whole: WholeTicket): string {
  const { unit, position, parts } = judgement.question;
  const { technician } = sayVerdict(judgement, namingOf(whole));
  const strength = strengthOf(judgement, whole.rulebook)?.sentences[0] ?? '';
  const fit = whole.rulebook.strengths.fits(unit.line, position, parts[0]!);
  const against = fit?.findings.filter(({ fits }) => fits === 'no').map(({ sentence }) => sentence) ?? [];
  return [technician, strength, ...against, 'A manager can except it with a reason.'].filter(Boolean).join(' ');
}

const FROM_WORDS = { shelf: '', owner: ', brought by the owner', bought: ', bought for this ticket' };

function eventData(
  part: PartRow,
  { quantity, purpose, from }: PickPart,
  position: PositionRow | null,
  reason: string | null,
) {
  const whereTo = position ? ` for ${position.name}` : '';
  return {
    part: part.number,
    quantity,
    for: `${purpose === 'spare' ? 'as a spare' : 'to be fitted'}${whereTo}${FROM_WORDS[from]}`,
    ...(reason === null ? {} : { reason: `manager's exception, ${reason}` }),
  };
}
