import { z } from 'zod';
import { dayText, instantText, line, personRef, reason, rowId, stage, verdict } from './common';
import { bench, position } from './catalogue';
import { authorisationView, estimateView, labourLine } from './estimate';
import { marks } from './marks';
import { photoView } from './photo';
import { fitView, partRef, rulingView, strengthView, verdictView } from './ruling';
import { cameFrom, partWait, shelfWord } from './shelf';
import { newOwner, owner, touchedPlace, unitIdentity, unitNote, unitView } from './unit';

/** A ticket as the board shows it. */
export const ticketCard = z.object({
  id: rowId,
  number: z.string(),
  stage,
  unit: z.string(),
  serial: z.string().nullable(),
  owner: z.string(),
  bench: z.object({ id: rowId, code: z.string() }).nullable(),
  promisedOn: dayText.nullable(),
  onHold: z.string().nullable(),
  openFlags: z.int(),
  worst: verdict.nullable(),
  /** parts it waits for: `here` says that all of them have come in */
  waits: z.object({ parts: z.array(z.string()), here: z.boolean() }).nullable(),
  version: z.int(),
});
export type TicketCard = z.infer<typeof ticketCard>;

/** Tickets by their promised day: today, before today, within the next seven days, or none promised. */
export const promisedFilter = z.enum(['today', 'late', 'week', 'none']);
export type PromisedFilter = z.infer<typeof promisedFilter>;

/** GET /api/board?bench=&owner=&promised=&flagged=&q= : open tickets by stage; `q` is a piece of owner, unit or number. */
export const board = z.object({
  benches: z.array(bench),
  /** owners with an open ticket at the location, by name */
  owners: z.array(z.object({ id: rowId, name: z.string() })),
  stages: z.array(z.object({ stage, count: z.int(), tickets: z.array(ticketCard) })),
});
export type Board = z.infer<typeof board>;
export const boardQuery = z.object({
  bench: z.coerce.number().pipe(rowId).optional(),
  owner: z.coerce.number().pipe(rowId).optional(),
  flagged: z.enum(['yes']).optional(),
  q: z.string().trim().max(100).optional(),
  promised: promisedFilter.optional(),
});

/** GET /api/search?q= : tickets by number, serial, owner, phone or part number in any writing; newest first, at most 50. */
export const searchHits = z.array(ticketCard.extend({ closedOn: dayText.nullable(), matched: z.string() }));
export type SearchHits = z.infer<typeof searchHits>;

/** POST /api/tickets: an owner and a unit, each either known by id or new. */
export const openTicket = z.object({
  ownerId: rowId.optional(),
  owner: newOwner.optional(),
  unitId: rowId.optional(),
  unit: unitIdentity.optional(),
  complaint: line(2_000).default(''),
  benchId: rowId.nullable().default(null),
  promisedOn: dayText.nullable().default(null),
});
export type OpenTicket = z.infer<typeof openTicket>;

/** PATCH /api/tickets/:id: what the tag says. */
export const changeTag = z.object({
  complaint: line(2_000).optional(),
  benchId: rowId.nullable().optional(),
  promisedOn: dayText.nullable().optional(),
});
export type ChangeTag = z.infer<typeof changeTag>;

export const CONDITIONS = ['sound', 'worn', 'sheared', 'missing'] as const;
export const condition = z.enum(CONDITIONS);

export * from './marks';

/**
 * PUT /api/tickets/:id/places: one or more places of one side. A place holds a part by number, or its marks, or
 * nothing (condition missing), or is left out with a reason. `fittedOn` null means it came with the unit or nobody
 * knows; for side `left` the server sets today.
 */
export const recordPlaces = z.object({
  side: z.enum(['found', 'left']),
  places: z
    .array(
      z.object({
        position: z.string(),
        place: z.int().positive(),
        partText: line(60).nullable().default(null),
        marks: marks.nullable().default(null),
        /** the candidate a person picked from those the marks allow */
        pickedCandidate: z.string().nullable().default(null),
        /** how it was told, such as `the bag it came in`; asked for where no mark tells the candidates apart */
        toldBy: line(200).nullable().default(null),
        condition: condition.nullable().default(null),
        fittedOn: dayText.nullable().default(null),
        leftOutWhy: line(300).nullable().default(null),
      }),
    )
    .min(1)
    .max(500),
});
export type RecordPlaces = z.infer<typeof recordPlaces>;

export const placeSide = z.object({
  recordId: rowId,
  part: partRef.nullable(),
  partText: z.string().nullable(),
  marks: marks.nullable(),
  candidates: z.array(partRef),
  /** said when all candidates get one verdict, so that none need be told from another */
  needless: z.string().nullable(),
  /** how the part was told when no number could be read */
  told: z.string().nullable(),
  /** whether it goes into its joint; null where nothing is known of either, or no shear fastener belongs there */
  fit: fitView.nullable(),
  condition: condition.nullable(),
  fittedOn: dayText.nullable(),
  leftOutWhy: z.string().nullable(),
  verdict: verdictView.nullable(),
  by: z.string().nullable(),
  at: instantText,
});
export type PlaceSide = z.infer<typeof placeSide>;

export const placeView = z.object({
  position: z.string(),
  place: z.int(),
  placeName: z.string(),
  found: placeSide.nullable(),
  left: placeSide.nullable(),
  /** what the unit held here before this ticket, from its newest earlier record */
  before: z.object({ part: partRef.nullable(), ticket: z.string(), on: dayText }).nullable(),
});
export type PlaceView = z.infer<typeof placeView>;

/** POST /api/tickets/:id/picks */
export const pickPart = z.object({
  position: z.string().nullable(),
  partText: line(60).min(1, { error: 'expected a part number' }),
  quantity: z.int().min(1).max(500),
  purpose: z.enum(['fit', 'spare']),
  /** a manager's reason to pick a part that is neither right nor allowed */
  exceptionReason: reason.nullable().default(null),
  /** where it came from; a part that is not on the shelf can still be used by saying so */
  from: cameFrom.default('shelf'),
});
export type PickPart = z.infer<typeof pickPart>;

export const pickView = z.object({
  id: rowId,
  position: z.string().nullable(),
  part: partRef,
  quantity: z.int(),
  purpose: z.enum(['fit', 'spare']),
  state: z.enum(['picked', 'fitted', 'returned', 'given']),
  priceMinor: z.int(),
  from: cameFrom,
  verdict: verdict.nullable(),
  strength: strengthView.nullable(),
  fit: fitView.nullable(),
  exception: z.object({ reason: z.string(), by: z.string().nullable() }).nullable(),
});
export type PickView = z.infer<typeof pickView>;

/** PUT /api/tickets/:id/safety: the points ticked so far. */
export const tickSafety = z.object({ checks: z.array(z.string().max(60)).max(50) });
export type TickSafety = z.infer<typeof tickSafety>;

/** POST /api/tickets/:id/stage: forward one stage through its gate, or back with a reason. */
export const moveStage = z.object({ to: z.union([stage, z.literal('handed-over')]), reason: reason.optional() });
export type MoveStage = z.infer<typeof moveStage>;

/** POST /api/tickets/:id/hold (null resumes) and /cancel */
export const holdTicket = z.object({ reason: reason.nullable() });
export const cancelTicket = z.object({ reason });

export const ticketEvent = z.object({
  id: rowId,
  at: instantText,
  by: personRef.nullable(),
  kind: z.string(),
  sentence: z.string(),
});

export const flagView = z.object({
  id: rowId,
  ticket: z.object({ id: rowId, number: z.string(), stage, bench: z.string().nullable() }),
  unit: z.string(),
  owner: z.string(),
  position: z.string(),
  positionName: z.string(),
  placeName: z.string(),
  verdict,
  severity: z.int(),
  part: partRef.nullable(),
  required: partRef.nullable(),
  sentence: z.string(),
  source: z.string().nullable(),
  strength: strengthView.nullable(),
  state: z.enum(['open', 'accepted', 'sent-back', 'callback', 'cleared']),
  openedAt: instantText,
  decision: z
    .object({ by: z.string().nullable(), at: instantText.nullable(), why: z.string(), until: dayText.nullable() })
    .nullable(),
  version: z.int(),
});
export type FlagView = z.infer<typeof flagView>;

/** GET /api/flags?state=open|decided : worst first; at most 500. */
export const flags = z.array(flagView);

/** What a gate still asks for: a stable code, and a sentence for a person. */
export const missingPoint = z.object({ code: z.string(), sentence: z.string(), position: z.string().nullable() });
export type MissingPoint = z.infer<typeof missingPoint>;

/** GET /api/tickets/:id: the whole line on one page. */
export const ticketView = z.object({
  id: rowId,
  number: z.string(),
  version: z.int(),
  stage,
  handedOver: z.boolean(),
  closedAt: instantText.nullable(),
  onHold: z.string().nullable(),
  cancelled: z.string().nullable(),
  complaint: z.string(),
  bench: bench.nullable(),
  promisedOn: dayText.nullable(),
  openedAt: instantText,
  owner,
  unit: unitView,
  positions: z.array(position),
  places: z.array(placeView),
  rulings: z.array(rulingView),
  picks: z.array(pickView),
  /** what lies on the shelf of the parts that are required, allowed or picked here; `kept` false: the shop keeps no shelf */
  shelf: z.object({ kept: z.boolean(), parts: z.array(shelfWord) }),
  waits: z.array(partWait),
  /** spares of earlier tickets that the owner has */
  ownerSpares: z.array(
    z.object({
      pickId: rowId,
      ticketId: rowId,
      ticket: z.string(),
      part: partRef,
      quantity: z.int(),
      givenOn: dayText.nullable(),
      verdict: verdict.nullable(),
    }),
  ),
  labour: z.object({ minutes: z.int(), minor: z.int(), lines: z.array(labourLine) }),
  /** what the owner is asked to pay as things stand, tax and all */
  totalMinor: z.int(),
  currency: z.string(),
  estimate: estimateView,
  authorisation: authorisationView.nullable(),
  safety: z.array(z.object({ id: z.string(), sentence: z.string(), ticked: z.boolean() })),
  flags: z.array(flagView),
  photos: z.array(photoView),
  /** per stage, what its gate still asks for; empty means the gate is open */
  missing: z.array(z.object({ stage, points: z.array(missingPoint) })),
  notes: z.array(unitNote),
  /** places of the unit that were worked on, on this ticket or before, newest first, at most 200 */
  touched: z.array(touchedPlace),
  earlierTickets: z.array(
    z.object({ id: rowId, number: z.string(), closedOn: dayText.nullable(), complaint: z.string() }),
  ),
  history: z.array(ticketEvent),
  sketch: z.string(),
});
export type TicketView = z.infer<typeof ticketView>;
