import { z } from 'zod';
import { bench } from './catalogue';
import { dayText, rowId, version } from './common';
import { ticketCard } from './ticket';

/** A ticket on the list of a bench: its card, and the minutes of labour written down for it. */
export const benchTicket = ticketCard.extend({ labourMinutes: z.int() });
export type BenchTicket = z.infer<typeof benchTicket>;

/**
 * What lies on a bench against what a day there takes, in minutes of labour. Tickets that wait for handover need no
 * bench any more and those on hold cannot be worked on, so neither counts; `unestimated` have no minutes yet.
 */
export const benchLoad = z.object({
  dayMinutes: z.int(),
  openMinutes: z.int(),
  onHoldMinutes: z.int(),
  unestimated: z.int(),
});
export type BenchLoad = z.infer<typeof benchLoad>;

/** One bench with its list, first to be done first. */
export const benchList = bench.extend({ load: benchLoad, tickets: z.array(benchTicket), version });
export type BenchList = z.infer<typeof benchList>;

/** GET /api/bench-lists: the benches of one's location, and the open tickets that are on none. */
export const benchLists = z.object({ today: dayText, benches: z.array(benchList), unplaced: z.array(benchTicket) });
export type BenchLists = z.infer<typeof benchLists>;

/**
 * POST /api/tickets/:id/bench: takes a ticket from the bench it was seen on (null: none) to another place. `before` is
 * the ticket it comes to stand before; null is the end of the list.
 */
export const moveOnBench = z.object({
  from: rowId.nullable(),
  to: rowId.nullable(),
  before: rowId.nullable().default(null),
});
export type MoveOnBench = z.infer<typeof moveOnBench>;

/** PATCH /api/benches/:id (If-Match): how many minutes of work a day at the bench takes. */
export const changeBench = z.object({
  dayMinutes: z.int().min(0).max(1_440, { error: 'expected 0 to 1440 minutes' }),
});
export type ChangeBench = z.infer<typeof changeBench>;

/** A ticket on one's own bench, with what the gate of its stage still asks for. */
export const benchJob = benchTicket.extend({ missing: z.array(z.string()) });
export type BenchJob = z.infer<typeof benchJob>;

/** GET /api/my-bench: the list of the bench a person works at; `bench` is null for somebody without one. */
export const myBench = z.object({
  today: dayText,
  benches: z.array(bench),
  bench: bench.nullable(),
  load: benchLoad.nullable(),
  jobs: z.array(benchJob),
});
export type MyBench = z.infer<typeof myBench>;

/** PUT /api/my-bench */
export const chooseMyBench = z.object({ benchId: rowId.nullable() });
export type ChooseMyBench = z.infer<typeof chooseMyBench>;
