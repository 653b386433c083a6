import type { TicketView } from '../../../../../libs/contracts';
import { positionsToWorkOn } from '../../../../../libs/ticket';

/** Codes of the positions to be worked on, by the same rule as the gates: a part is picked, or a place calls for work. */
export function codesToWorkOn(ticket: Pick<TicketView, 'positions' | 'places' | 'picks' | 'flags'>): Set<string> {
  const accepted = (position: string, place: string) =>
    ticket.flags.some((flag) => flag.state === 'accepted' && flag.position === position && flag.placeName === place);
  const positions = ticket.positions.map(({ code, name }) => ({
    code,
    name,
    rulingSettled: true,
    places: ticket.places
      .filter(({ position }) => position === code)
      .map(({ placeName, found }) => ({
        name: placeName,
        recorded: found !== null,
        leftOut: (found?.leftOutWhy ?? null) !== null,
        condition: found?.condition ?? null,
        verdict: found?.verdict?.verdict ?? null,
        accepted: accepted(code, placeName),
      })),
  }));
  const picks = ticket.picks.map((pick) => ({
    part: pick.part.number,
    position: pick.position,
    purpose: pick.purpose,
    state: pick.state,
    verdict: pick.verdict,
    exception: pick.exception !== null,
  }));
  return new Set(positionsToWorkOn({ positions, picks }).map(({ code }) => code));
}
