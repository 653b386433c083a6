import { z } from 'zod';
import { dayText, instantText, line, reason, rowId, verdict } from './common';
import { partRef } from './ruling';

/** Ways of reaching an owner that the owner can decline. */
export const CONTACT_WAYS = ['phone', 'letter', 'email'] as const;
export type ContactWay = (typeof CONTACT_WAYS)[number];

export const ATTEMPT_OUTCOMES = ['reached', 'no-answer', 'message-left', 'refused', 'sent'] as const;

/** Which callbacks a list shows; those of a later day are `later`, all that are not closed are `open`. */
export const CALLBACK_LISTS = ['due', 'later', 'open', 'booked', 'settled', 'withdrawn', 'closed', 'all'] as const;
export type CallbackList = (typeof CALLBACK_LISTS)[number];

/** The most callbacks written to in one go. */
export const MOST_AT_ONCE = 200;

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
  outcome: z.enum(ATTEMPT_OUTCOMES),
  note: z.string(),
});

/** An e-mail about a callback, and what became of it. */
export const callbackMailView = z.object({
  at: instantText,
  state: z.enum(['queued', 'sending', 'sent', 'failed', 'unclear', 'cancelled']),
  problem: z.string().nullable(),
});

/** An owner to contact because the answer changed for a unit already handed over. */
export const callbackView = z.object({
  id: rowId,
  state: z.enum(['open', 'booked', 'settled', 'withdrawn']),
  urgent: z.boolean(),
  unit: z.object({ id: rowId, name: z.string(), serial: z.string().nullable() }),
  owner: z.object({
    id: rowId,
    name: z.string(),
    phone: z.string(),
    email: z.string(),
    address: z.string(),
    consent: z.boolean(),
    declined: z.array(z.enum(CONTACT_WAYS)),
  }),
  lastTicket: z.object({ id: rowId, number: z.string(), handedOverOn: dayText.nullable() }).nullable(),
  openedAt: instantText,
  closedAt: instantText.nullable(),
  closedWhy: z.string().nullable(),
  reasons: z.array(callbackReasonView),
  attempts: z.array(callbackAttemptView),
  mails: z.array(callbackMailView),
  /** the day on which somebody is to try again; null where it is today */
  nextOn: dayText.nullable(),
  /** what to say on the phone */
  say: z.string(),
  ticketId: rowId.nullable(),
  version: z.int(),
});
export type CallbackView = z.infer<typeof callbackView>;

/** GET /api/callbacks?state=&after= : stop use first, then by the day of the next try, then oldest; keyset pages of 100. */
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
  outcome: z.enum(ATTEMPT_OUTCOMES),
  note: line(1_000).default(''),
  /** try again on this day; null is: leave it to be called today */
  nextOn: dayText.nullable().default(null),
  /** ways the owner said they do not want; left out where nothing was said */
  declined: z.array(z.enum(CONTACT_WAYS)).optional(),
});
export type NewAttempt = z.infer<typeof newAttempt>;

/** POST /api/callbacks/letters and /mails: writes to the owners of these callbacks. */
export const writeToOwners = z.object({
  ids: z.array(rowId).min(1, { error: 'expected at least one callback' }).max(MOST_AT_ONCE),
  nextOn: dayText.nullable().default(null),
});
export type WriteToOwners = z.infer<typeof writeToOwners>;

const calledOwner = z.object({ id: rowId, name: z.string() });

/** To whom it went, and to whom not, each with the reason in a sentence. */
export const writtenToOwners = z.object({
  /** under which the letters are printed, also again; null where none was written, and for e-mails */
  batch: z.string().nullable(),
  written: z.array(calledOwner),
  leftOut: z.array(calledOwner.extend({ why: z.string() })),
});
export type WrittenToOwners = z.infer<typeof writtenToOwners>;

/** GET /api/settings/mail: whether e-mails can be sent, and from where; the password is told to nobody. */
export const mailSetUp = z.object({ server: z.string().nullable(), from: z.string().nullable() });
export type MailSetUp = z.infer<typeof mailSetUp>;

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
