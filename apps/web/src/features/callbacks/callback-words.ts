import { day, formatDay } from '../../../../../libs/day';
import type { CallbackView, ContactWay, NewAttempt, SettleCallback } from '../../../../../libs/contracts';

export const HOW_WORDS: Record<NewAttempt['how'], string> = {
  phone: 'Phone',
  letter: 'Letter',
  email: 'E-mail',
  'in-person': 'In person',
};

export const OUTCOME_WORDS: Record<NewAttempt['outcome'], string> = {
  reached: 'Reached',
  'no-answer': 'No answer',
  'message-left': 'Message left',
  refused: 'Would not talk',
  sent: 'Sent',
};

export const SETTLE_WORDS: Record<SettleCallback['outcome'], string> = {
  booked: 'Unit is booked in: open a ticket',
  'owner-declined': 'Owner declined',
  'part-sent': 'Part sent',
  'unit-gone': 'Unit is gone',
  'done-elsewhere': 'Done elsewhere',
};

export const STATE_WORDS = {
  due: 'To call today',
  later: 'Another day',
  booked: 'Booked in',
  settled: 'Settled',
  withdrawn: 'No longer needed',
} as const;

/** What the owner said they do not want. */
export const WAY_WORDS: Record<ContactWay, string> = { phone: 'calls', letter: 'letters', email: 'e-mails' };

export const MAIL_WORDS: Record<CallbackView['mails'][number]['state'], string> = {
  queued: 'E-mail waits to be sent',
  sending: 'E-mail is being sent',
  sent: 'E-mail sent',
  failed: 'E-mail not sent',
  unclear: 'Not known whether the e-mail was sent',
  cancelled: 'E-mail not sent any more',
};

/** After how many days somebody is usually tried again; a letter takes its time on the way and on the table. */
const DAYS_UNTIL_NEXT: Record<NewAttempt['outcome'], number | null> = {
  reached: null,
  'no-answer': 1,
  'message-left': 2,
  refused: null,
  sent: 14,
};

/** The day that is proposed for the next try; empty where the shop has to think about it. */
export function nextTryAfter(outcome: NewAttempt['outcome'], today: string): string {
  const days = DAYS_UNTIL_NEXT[outcome];
  return days === null ? '' : formatDay(day(today) + days);
}
