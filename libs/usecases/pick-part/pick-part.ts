import { may, type PickPart, type TicketView } from '../../contracts';
import { sayVerdict, type Judgement } from '../../fit-rules';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { strengthOf } from '../judge-installs';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, PositionRow } from '../ports/index';
import { readPartTexts } from '../read-part-text/read-part-text';
import { namingOf } from '../rule-on-unit/index';
import type { Ports } from '../run';
import { judgePart, type WholeTicket } from '../view-ticket/index';

/**
 * Takes a part from the shelf for the ticket: to be fitted in a position, or as a spare for the owner. A part that is
 * neither right nor allowed in its position needs a manager's exception with a reason.
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
    const exception = exceptionFor(withPart(whole, part), actor, input, position.value, part);
    if (!exception.ok) return exception;
    const { quantity, purpose } = input;
    const pick = {
      positionId: position.value?.id ?? null,
      partId: part.id,
      quantity,
      purpose,
      priceMinor: (part.priceMinor ?? 0) * quantity,
      exceptionReason: exception.value,
    };
    return done({
      events: [{ kind: 'picked', data: eventData(part, input, position.value, exception.value), personId: actor.id }],
      after: async (after) => {
        await after.tickets.insertPick(whole.ticket.id, pick, actor.id);
      },
    });
  });
}

function positionFor(whole: WholeTicket, { position: code, purpose, quantity }: PickPart): Outcome<PositionRow | null> {
  const { stage } = whole.ticket;
  if (stage === 'intake' || stage === 'inspection') {
    return refused('wrong-stage', 'Parts are picked once the inspection is done.');
  }
  if (code === null) {
    return purpose === 'spare'
      ? done(null)
      : refused('bad-input', 'A part to be fitted needs its position.', { field: 'position' });
  }
  const position = whole.positions.get(code);
  if (!position) return refused('bad-input', `The unit has no position '${code}'.`, { field: 'position' });
  if (purpose === 'fit' && quantity > position.places) {
    const detail = `${position.name} has ${position.places} place(s), so ${quantity} cannot be fitted; pick the rest as spares.`;
    return refused('bad-input', detail, { field: 'quantity' });
  }
  return done(position);
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
  position: PositionRow | null,
  part: PartRow,
): Outcome<string | null> {
  const judgement = position && judgePart(whole, position.code, part.key);
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

function eventData(
  part: PartRow,
  { quantity, purpose }: PickPart,
  position: PositionRow | null,
  reason: string | null,
) {
  const whereTo = position ? ` for ${position.name}` : '';
  return {
    part: part.number,
    quantity,
    for: `${purpose === 'spare' ? 'as a spare' : 'to be fitted'}${whereTo}`,
    ...(reason === null ? {} : { reason: `manager's exception, ${reason}` }),
  };
}
