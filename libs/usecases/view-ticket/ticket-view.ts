import type {
  EstimateRevision,
  PartWaitView,
  PhotoView,
  PickView,
  PlaceView,
  TicketView,
  UnitNoteView,
} from '../../contracts';
import { missingFor, SAFETY_POINTS } from '../../ticket';
import { placeName, toPosition } from '../browse-catalogue/index';
import { estimateView } from '../estimate-work/estimate-as-it-stands';
import type {
  AuthorisationRow,
  BeforeRow,
  EarlierTicketRow,
  EventRow,
  PickRow,
  PlaceRecordRow,
  PositionRow,
  SpareRow,
} from '../ports/index';
import { strengthOf } from '../judge-installs';
import { partRefOf, rulingView, verdictView } from '../rule-on-unit/index';
import { unitView } from '../view-unit/index';
import { flagView } from './flag-view';
import { gateFacts, judgePick, recordAt } from './gate-facts';
import { judgeRecord, positionById, type WholeTicket } from './load-ticket';
import { sayEvent } from './say-event';
import { sayNeedless } from './say-needless';

/** What the page shows beside the ticket itself. */
export interface Around {
  readonly before: readonly BeforeRow[];
  readonly events: readonly EventRow[];
  readonly notes: readonly UnitNoteView[];
  readonly earlier: readonly EarlierTicketRow[];
  readonly revisions: readonly EstimateRevision[];
  readonly shelf: TicketView['shelf'];
  readonly waits: readonly PartWaitView[];
  readonly spares: readonly SpareRow[];
  readonly photos: readonly PhotoView[];
  readonly touched: TicketView['touched'];
}

/** The whole ticket line on one page. */
export function ticketView(whole: WholeTicket, around: Around): TicketView {
  const { ticket, unit } = whole;
  const picks = whole.picks.map((pick) => pickView(whole, pick));
  const estimate = estimateView(whole, around.revisions);
  return {
    ...columnsOf(whole),
    owner: unit.owner,
    unit: unitView(whole),
    positions: whole.positionList.map(toPosition),
    places: whole.positionList.flatMap((position) => placeViews(whole, position, around.before)),
    rulings: whole.rulings.map((ruling) => rulingView(ruling, whole)),
    picks,
    shelf: around.shelf,
    waits: [...around.waits],
    ownerSpares: [...around.spares],
    labour: { minutes: ticket.labourMinutes, minor: ticket.labourMinor, lines: [...ticket.labourLines] },
    totalMinor: estimate.totalMinor,
    currency: whole.money.currency,
    estimate,
    authorisation: ticket.authorisation && authorisationView(ticket.authorisation),
    safety: SAFETY_POINTS.map((point) => ({ ...point, ticked: ticket.safetyChecks.includes(point.id) })),
    flags: whole.flags.map(flagView),
    photos: [...around.photos],
    missing: missingFor(gateFacts(whole)).map(({ stage, points }) => ({ stage, points: [...points] })),
    notes: [...around.notes],
    touched: around.touched,
    earlierTickets: [...around.earlier],
    history: around.events.map(eventView),
    sketch: unit.line?.sketch ?? '',
  };
}

function columnsOf({ ticket }: WholeTicket) {
  return {
    id: ticket.id,
    number: ticket.number,
    version: ticket.version,
    stage: ticket.stage,
    handedOver: ticket.handedOver,
    closedAt: ticket.closedAt,
    onHold: ticket.holdReason,
    cancelled: ticket.cancelReason,
    complaint: ticket.complaint,
    bench: ticket.bench,
    promisedOn: ticket.promisedOn,
    openedAt: ticket.openedAt,
  };
}

function authorisationView({ by, how, amountMinor, revision, at, recordedBy }: AuthorisationRow) {
  return { by, how, amountMinor, revision: revision ?? null, at, recordedBy: recordedBy ?? null };
}

function placeViews(whole: WholeTicket, position: PositionRow, before: readonly BeforeRow[]): PlaceView[] {
  return Array.from({ length: position.places }, (_, i) => {
    const place = i + 1;
    const earlier = before.find((one) => one.positionId === position.id && one.place === place);
    return {
      position: position.code,
      place,
      placeName: placeName(position, place),
      found: sideView(whole, recordAt(whole, position.id, place, 'found')),
      left: sideView(whole, recordAt(whole, position.id, place, 'left')),
      before: earlier ? { part: partById(whole, earlier.partId), ticket: earlier.ticket, on: earlier.on } : null,
    };
  });
}

function sideView(whole: WholeTicket, record: PlaceRecordRow | null): PlaceView['found'] {
  if (!record) return null;
  const judgement = judgeRecord(whole, record);
  return {
    recordId: record.id,
    part: partById(whole, record.partId),
    partText: record.partText,
    marks: record.marks,
    candidates: record.candidates.flatMap((id) => partById(whole, id) ?? []),
    needless: judgement && sayNeedless(judgement),
    told: record.told,
    fit: record.partId === null ? null : fitOf(whole, record.positionId, record.partId),
    condition: record.condition,
    fittedOn: record.fittedOn,
    leftOutWhy: record.leftOutWhy,
    verdict: judgement && verdictView(judgement, whole),
    by: record.recordedBy,
    at: record.recordedAt,
  };
}

function partById(whole: WholeTicket, id: number | null) {
  const part = id === null ? undefined : whole.partsById.get(id);
  return part ? partRefOf(part.key, whole.partsByKey) : null;
}

function pickView(whole: WholeTicket, pick: PickRow): PickView {
  return {
    id: pick.id,
    position: pick.positionId === null ? null : (positionById(whole, pick.positionId)?.code ?? null),
    part: partById(whole, pick.partId)!,
    quantity: pick.quantity,
    purpose: pick.purpose,
    state: pick.state,
    priceMinor: pick.priceMinor,
    from: pick.cameFrom,
    ...judgedPick(whole, pick),
    exception: pick.exceptionReason === null ? null : { reason: pick.exceptionReason, by: pick.exceptionBy },
  };
}

function judgedPick(whole: WholeTicket, pick: PickRow): Pick<PickView, 'verdict' | 'strength' | 'fit'> {
  const judgement = judgePick(whole, pick);
  return {
    verdict: judgement?.verdict ?? null,
    strength: judgement && strengthOf(judgement, whole.rulebook),
    fit: pick.positionId === null ? null : fitOf(whole, pick.positionId, pick.partId),
  };
}

/** Whether the part goes into the joint of the position; null where there is nothing to say. */
function fitOf({ facts, positionList, partsById, rulebook }: WholeTicket, positionId: number, partId: number) {
  const position = positionById({ positionList }, positionId);
  return facts && position ? rulebook.strengths.fits(facts.line, position.code, partsById.get(partId)!.key) : null;
}

function eventView({ id, at, personId, personName, kind, data }: EventRow): TicketView['history'][number] {
  return {
    id,
    at,
    by: personId === null || personName === null ? null : { id: personId, name: personName },
    kind,
    sentence: sayEvent({ kind, data }),
  };
}
