import { z } from 'zod';
import { dayText, instantText, line, minorUnits, version } from './common';

/** Labour, or something else that is asked for besides parts; its amount is for the whole line. */
export const labourLine = z.object({
  kind: z.enum(['labour', 'other']).default('labour'),
  what: line(200).min(1, { error: 'expected what is done' }),
  minutes: z.int().min(0).max(10_000),
  minor: minorUnits,
});
export type LabourLine = z.infer<typeof labourLine>;

/** PUT /api/tickets/:id/labour: the lines given take the place of those before. */
export const setLabour = z.object({ lines: z.array(labourLine).max(50) });
export type SetLabour = z.infer<typeof setLabour>;

/** The tax of an estimate; `basisPoints` are hundredths of a percent, `included` says that prices hold it already. */
export const tax = z.object({
  name: line(40).min(1, { error: 'expected the name of the tax' }),
  basisPoints: z.int().min(0).max(10_000, { error: 'expected 0 to 10000 hundredths of a percent' }),
  included: z.boolean(),
});

export const estimateLine = z.object({
  kind: z.enum(['part', 'spare', 'labour', 'other']),
  part: z.string().nullable(),
  what: z.string(),
  quantity: z.int(),
  minutes: z.int(),
  amountMinor: z.int(),
});

const sums = z.object({ netMinor: z.int(), taxMinor: z.int(), totalMinor: z.int() });

/** One revision of the estimate, as it was put to the owner. */
export const estimateRevision = sums.extend({
  revision: z.int(),
  at: instantText,
  by: z.string().nullable(),
  lines: z.array(estimateLine),
  tax,
  currency: z.string(),
});
export type EstimateRevision = z.infer<typeof estimateRevision>;

/** The estimate as things stand, and every revision that was written down, the newest first. */
export const estimateView = sums.extend({
  lines: z.array(estimateLine),
  tax,
  /** what an hour of labour is usually asked for */
  hourMinor: z.int(),
  /** true when the newest revision no longer says what is picked and done, or there is none */
  differs: z.boolean(),
  revisions: z.array(estimateRevision),
});
export type EstimateView = z.infer<typeof estimateView>;

/**
 * POST /api/tickets/:id/authorisation: who said yes, how, and to which amount. Without a revision it is the estimate as
 * it stands, which is written down as a new revision where it differs from the newest.
 */
export const authorise = z.object({
  by: line(200).min(1, { error: 'expected the name of the person who said yes' }),
  how: z.enum(['in-person', 'phone', 'email', 'signature']),
  amountMinor: minorUnits,
  revision: z.int().positive().optional(),
});
export type Authorise = z.infer<typeof authorise>;

/** The owner's yes as it is kept; words from before there were revisions have none. */
export const authorisationView = authorise.extend({
  revision: z.int().positive().nullable(),
  at: instantText,
  recordedBy: z.string().nullable(),
});

/** PUT /api/settings/money (If-Match): one currency for the whole shop, its tax, and what an hour is asked for. */
export const moneySettings = z.object({
  currency: z.string().regex(/^[A-Z]{3}$/, { error: 'expected a currency of three capital letters, such as EUR' }),
  tax,
  hourMinor: minorUnits,
});
export type MoneySettings = z.infer<typeof moneySettings>;

/** GET /api/settings/money */
export const settledMoney = moneySettings.extend({ version });
export type SettledMoney = z.infer<typeof settledMoney>;

/** GET /api/bookkeeping?from=&to= : the estimates of tickets handed over from that day to before the other, as CSV. */
export const bookkeepingQuery = z.object({ from: dayText, to: dayText });
export type BookkeepingQuery = z.infer<typeof bookkeepingQuery>;
