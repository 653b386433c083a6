import type { NewAttempt, SettleCallback } from '../../../../../libs/contracts';

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
};

export const SETTLE_WORDS: Record<SettleCallback['outcome'], string> = {
  booked: 'Unit is booked in: open a ticket',
  'owner-declined': 'Owner declined',
  'part-sent': 'Part sent',
  'unit-gone': 'Unit is gone',
  'done-elsewhere': 'Done elsewhere',
};

export const STATE_WORDS = {
  open: 'To call',
  booked: 'Booked in',
  settled: 'Settled',
  withdrawn: 'No longer needed',
} as const;
