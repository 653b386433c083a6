import { z } from 'zod';
import { dayText, rowId } from './common';
import { partRef } from './ruling';
import { settledNote, touchedPlace, unitNote, unitView } from './unit';

/** GET /api/scan?text= : what a scanner read, or a person typed, with whatever marks the scanner puts in it. */
export const scanQuery = z.object({ text: z.string().min(1).max(300) });

/** Where a scan leads; `text` is none of our codes, to be searched for by its words. */
export const scanAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('ticket'), id: rowId }),
  z.object({ kind: z.literal('unit'), id: rowId }),
  z.object({ kind: z.literal('part'), part: partRef, pack: z.int(), batch: z.string().nullable() }),
  z.object({ kind: z.literal('unknown'), sentence: z.string() }),
  z.object({ kind: z.literal('text') }),
]);
export type ScanAnswer = z.infer<typeof scanAnswer>;
export const scanned = z.object({ found: scanAnswer });
export type Scanned = z.infer<typeof scanned>;

/** GET /api/units/:id: a unit as it is greeted when it comes in again. */
export const unitVisit = z.object({
  unit: unitView,
  /** whether it is of the location of whoever looks: only there is written down what becomes of it */
  here: z.boolean(),
  /** what its own tag says */
  code: z.string(),
  openTicket: z.object({ id: rowId, number: z.string() }).nullable(),
  earlierTickets: z.array(
    z.object({ id: rowId, number: z.string(), closedOn: dayText.nullable(), complaint: z.string() }),
  ),
  /** notes that waited for this visit */
  notes: z.array(unitNote),
  /** places that were worked on, newest first, at most 200 */
  touched: z.array(touchedPlace),
  /** newest first, at most 20 */
  settledNotes: z.array(settledNote),
  callback: z.object({ id: rowId, urgent: z.boolean(), say: z.string() }).nullable(),
});
export type UnitVisit = z.infer<typeof unitVisit>;
