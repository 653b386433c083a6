import type { Judgement } from '../../fit-rules';
import { formatDay } from '../../day';
import type { FlagFacts, PickFacts, PlaceFacts, TicketFacts } from '../../ticket';
import { placeName } from '../browse-catalogue/index';
import { estimateAsItStands } from '../estimate-work/estimate-as-it-stands';
import type { FlagRow, PickRow, PlaceRecordRow, PositionRow } from '../ports/index';
import { judgePart, judgeRecord, positionById, type WholeTicket } from './load-ticket';

/** What the gates of a ticket rest on, from the ticket as it was read. */
export function gateFacts(whole: WholeTicket): TicketFacts {
  const { ticket, unit } = whole;
  return {
    stage: ticket.stage,
    onHold: ticket.holdReason !== null,
    closed: closedHow(whole),
    lineKnown: unit.line !== null,
    serialRecorded: unit.serial !== null || (unit.serialAbsent ?? '') !== '',
    positions: whole.positionList.map((position, i) => ({
      code: position.code,
      name: position.name,
      rulingSettled: whole.rulings[i]!.settled,
      places: placesOf(whole, position),
    })),
    picks: whole.picks.map((pick) => pickFacts(whole, pick)),
    flags: whole.flags.map((flag) => flagFacts(whole, flag)),
    money: {
      totalMinor: estimateAsItStands(whole).totalMinor,
      authorisedMinor: ticket.authorisation?.amountMinor ?? null,
      currency: whole.money.currency,
    },
    safetyTicked: ticket.safetyChecks,
  };
}

export function closedHow({ ticket }: Pick<WholeTicket, 'ticket'>): TicketFacts['closed'] {
  if (ticket.closedAt === null) return null;
  return ticket.handedOver ? 'handed-over' : 'cancelled';
}

export function recordAt(
  whole: Pick<WholeTicket, 'records'>,
  positionId: number,
  place: number,
  side: 'found' | 'left',
): PlaceRecordRow | null {
  return whole.records.find((one) => one.positionId === positionId && one.place === place && one.side === side) ?? null;
}

function placesOf(whole: WholeTicket, position: PositionRow): PlaceFacts[] {
  return Array.from({ length: position.places }, (_, i) => {
    const found = recordAt(whole, position.id, i + 1, 'found');
    return {
      name: placeName(position, i + 1),
      recorded: found !== null,
      leftOut: found !== null && found.leftOutWhy !== null,
      condition: found?.condition ?? null,
      verdict: found && (judgeRecord(whole, found)?.verdict ?? null),
      accepted: whole.flags.some((flag) => accepts(whole, flag, position.id, i + 1, found)),
    };
  });
}

function accepts(whole: WholeTicket, flag: FlagRow, positionId: number, place: number, found: PlaceRecordRow | null) {
  const here =
    flag.positionId === positionId && flag.place === place && (flag.part?.id ?? null) === (found?.partId ?? null);
  return here && flag.state === 'accepted' && !hasLapsed(whole, flag);
}

function hasLapsed({ today }: WholeTicket, { acceptedUntil }: FlagRow): boolean {
  return acceptedUntil !== null && acceptedUntil < formatDay(today);
}

function pickFacts(whole: WholeTicket, pick: PickRow): PickFacts {
  const position = pick.positionId === null ? undefined : positionById(whole, pick.positionId);
  return {
    position: position?.code ?? null,
    part: whole.partsById.get(pick.partId)!.number,
    purpose: pick.purpose,
    state: pick.state,
    verdict: judgePick(whole, pick)?.verdict ?? null,
    exception: pick.exceptionReason !== null,
  };
}

/** The judgement on a picked part in its position, or the first that a spare serves; null where it serves none. */
export function judgePick(whole: WholeTicket, pick: PickRow): Judgement | null {
  const position = positionById(whole, pick.positionId ?? pick.spareFor[0] ?? 0);
  return position ? judgePart(whole, position.code, whole.partsById.get(pick.partId)!.key) : null;
}

function flagFacts(whole: WholeTicket, flag: FlagRow): FlagFacts {
  return {
    position: flag.position,
    placeName: `${flag.positionName}, ${flag.placeName}`,
    state: flagState(whole, flag),
  };
}

/** The picked part is neither fitted nor back on the shelf. One of an earlier ticket went out with the owner. */
function lies({ picks }: WholeTicket, pickId: number): boolean {
  const state = picks.find(({ id }) => id === pickId)?.state ?? 'given';
  return state === 'picked' || state === 'given';
}

/** A flag sent back stands until the bench has put it right; an acceptance lapses only while the part is still there. */
function flagState(whole: WholeTicket, flag: FlagRow): FlagFacts['state'] {
  if (flag.state === 'open' || flag.state === 'sent-back') return 'open';
  if (flag.state !== 'accepted') return 'settled';
  const { positionId, place } = flag;
  if (place < 0) return hasLapsed(whole, flag) && lies(whole, -place) ? 'lapsed' : 'accepted';
  const now = recordAt(whole, positionId, place, 'left') ?? recordAt(whole, positionId, place, 'found');
  const stillThere = (now?.partId ?? null) === (flag.part?.id ?? null);
  return hasLapsed(whole, flag) && stillThere ? 'lapsed' : 'accepted';
}
