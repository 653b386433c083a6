import { z } from 'zod';
import { dayText, stage } from './common';
import { partRef } from './ruling';

/** GET /api/figures?from=&to= : closed-open, `to` is not part of it; the last twelve months where left out. */
export const figuresQuery = z.object({ from: dayText.optional(), to: dayText.optional() });
export type FiguresQuery = z.infer<typeof figuresQuery>;

const count = z.int().min(0);

/** The longest span figures are made for; longer than any shop's books, and it keeps the number of months small. */
export const LONGEST_SPAN_DAYS = 3_700;

/** How the shop did in a span of days. What each figure counts stands in {@link FIGURE_MEANINGS}. */
export const figures = z.object({
  from: dayText,
  to: dayText,
  byBench: z.array(z.object({ bench: z.string().nullable(), location: z.string(), tickets: count, flagged: count })),
  byPart: z.array(z.object({ part: partRef, places: count, flagged: count })),
  callbacks: z.array(
    z.object({
      from: dayText,
      to: dayText,
      opened: count,
      done: count,
      notNeeded: count,
      waiting: count,
      /** days from opening to done, the middle one of all; null where none is done */
      medianDays: z.number().nullable(),
    }),
  ),
  stages: z.array(
    z.object({ stage, stays: count, medianHours: z.number().nullable(), longHours: z.number().nullable() }),
  ),
  unsettled: z.array(
    z.object({
      line: z.string().nullable(),
      units: count,
      /** possible days lie within 31 days */
      settled: count,
      /** they do not: one run of days that is longer, several runs, or evidence that contradicts itself */
      longer: count,
      severalRuns: count,
      contradicted: count,
    }),
  ),
  wrongParts: z.array(
    z.object({ part: partRef, required: partRef.nullable(), verdict: z.enum(['wrong', 'outdated']), places: count }),
  ),
});
export type Figures = z.infer<typeof figures>;

/** What each figure counts, in one sentence; the page says it beside the figure, the tests count by it. */
export const FIGURE_MEANINGS = {
  byBench:
    'Of the tickets taken in within these days and not cancelled, how many have had a flag at any time since, by the bench they are at now.',
  byPart:
    'Of the places on those tickets that held the part when found or when left, how many have had a flag about that part; the twelve parts with the most flags.',
  callbacks:
    'The callbacks opened in each part of these days, and how they stand today: done, no longer needed because the answer changed back, or still to be done.',
  stages:
    'How long tickets stayed in a stage they left within these days, by the clock, holds and nights included: half were quicker than the middle value, nine in ten quicker than the long one.',
  unsettled:
    'Of the units taken in within these days, those whose possible build days do not lie within 31 days of each other, as the evidence stands today.',
  wrongParts:
    'The parts flagged as wrong or outdated within these days, with the part that was required, by the number of places; the twelve most frequent.',
} as const;
