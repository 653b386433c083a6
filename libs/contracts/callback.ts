import { z } from 'zod';
import { dayText, instantText, line, reason, rowId, verdict } from './common';
import { partRef } from './ruling';

export const callbackReasonView = z.object({
  source: z.string(),
  position: z.string(),
  placeName: z.string(),
  part: partRef.nullable(),
  required: partRef.nullable(),
  verdict,
  action: z.enum(['call-back', 'stop-use']),
  sentence: z.string(),
  /** it is about spares the owner was given, not about what is in the unit */
  spare: z.boolean(),
  withdrawn: z.object({ at: instantText, why: z.string() }).nullable(),
});

export const callbackAttemptView = z.object({
  at: instantText,
  by: z.string().nullable(),
  how: z.enum(['phone', 'letter', 'email', 'in-person']),
  outcome: z.enum(['reached', 'no-answer', 'message-left', 'refused']),
  note: z.string(),
});

/** An owner to contact because the answer changed for a unit already handed over. */
export const callbackView = z.object({
  id: rowId,
  state: z.enum(['open', 'booked', 'settled', 'withdrawn']),
  urgent: z.boolean(),
  unit: z.object({ id: rowId, name: z.string(), serial: z.string().nullable() }),
  owner: z.object({ id: rowId, name: z.string(), phone: z.string(), email: z.string(), consent: z.boolean() }),
  lastTicket: z.object({ id: rowId, number: z.string(), handedOverOn: dayText.nullable() }).nullable(),
  openedAt: instantText,
  closedAt: instantText.nullable(),
  closedWhy: z.string().nullable(),
  reasons: z.array(callbackReasonView),
  attempts: z.array(callbackAttemptView),
  /** what to say on the phone */
  say: z.string(),
  ticketId: rowId.nullable(),
  version: z.int(),
});
export type CallbackView = z.infer<typeof callbackView>;

/** GET /api/callbacks?state=&after= : urgent first, then oldest; keyset pages of 100. */
export const callbackPage = z.object({
  total: z.int(),
  urgent: z.int(),
  items: z.array(callbackView),
  next: z.string().nullable(),
});
export type CallbackPage = z.infer<typeof callbackPage>;

/** POST /api/callbacks/:id/attempts */
export const newAttempt = z.object({
  how: z.enum(['phone', 'letter', 'email', 'in-person']),
  outcome: z.enum(['reached', 'no-answer', 'message-left', 'refused']),
  note: line(1_000).default(''),
});
export type NewAttempt = z.infer<typeof newAttempt>;

/** POST /api/callbacks/:id/settle: how it ended; `booked` opens a ticket for the unit and keeps the callback until it is handed over. */
export const settleCallback = z.object({
  outcome: z.enum(['booked', 'owner-declined', 'part-sent', 'unit-gone', 'done-elsewhere']),
  reason,
});
export type SettleCallback = z.infer<typeof settleCallback>;

/** POST /api/flags/:id/decide: a manager's review. */
export const decideFlag = z.object({
  decision: z.enum(['accept', 'send-back', 'callback']),
  reason,
  until: dayText.nullable().default(null),
});
export type DecideFlag = z.infer<typeof decideFlag>;
