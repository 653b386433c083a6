import type { CallbackView, CameFrom, FlagView, NewAttempt, PickView } from '../../../../../libs/contracts';
import { SAFETY_POINTS } from '../../../../../libs/ticket';
import { EVIDENCE_FORMS, evidenceWords } from '../../lib/evidence-words';
import { ACTION_WORDS, STAGE_WORDS } from '../../lib/say';

type Words = Readonly<Record<string, string>>;

const FLAG_STATES: Record<FlagView['state'], string> = {
  open: 'waits for a manager',
  accepted: 'accepted',
  'sent-back': 'sent back to the bench',
  callback: 'callback ordered',
  cleared: 'put right',
};
const CALL_STATES: Record<CallbackView['state'], string> = {
  open: 'to call',
  booked: 'booked in',
  settled: 'settled',
  withdrawn: 'no longer needed',
};
const MAIL_STATES: Record<CallbackView['mails'][number]['state'], string> = {
  queued: 'waits to be sent',
  sending: 'being sent',
  sent: 'sent',
  failed: 'not sent',
  unclear: 'not known whether it was sent',
  cancelled: 'not sent any more',
};
const PICK_STATES: Record<PickView['state'], string> = {
  picked: 'picked',
  fitted: 'fitted',
  returned: 'back on the shelf',
  given: 'given to the owner',
};
const PURPOSES: Record<PickView['purpose'], string> = { fit: 'to fit', spare: 'a spare for the owner' };
const CAME_FROM: Record<CameFrom, string> = {
  shelf: 'the shelf',
  owner: 'the owner',
  bought: 'bought for this ticket',
};
const HOW: Record<NewAttempt['how'], string> = {
  phone: 'on the phone',
  letter: 'by letter',
  email: 'by e-mail',
  'in-person': 'in person',
};
const OUTCOMES: Record<NewAttempt['outcome'], string> = {
  reached: 'reached',
  'no-answer': 'no answer',
  'message-left': 'message left',
  refused: 'would not talk',
  sent: 'sent',
};
const SIDES: Words = { found: 'as found', left: 'as left' };
const MOVEMENTS: Words = {
  opening: 'first count',
  receive: 'received',
  count: 'counted',
  pick: 'picked',
  return: 'back on the shelf',
  fit: 'fitted',
  'take-out': 'taken out of stock',
  give: 'given to the owner',
};
const SAFETY: Words = Object.fromEntries(SAFETY_POINTS.map(({ id, sentence }) => [id, sentence]));

/** Codes by `table.column`, or by the column alone where it means the same in every table. */
const CODES: Readonly<Record<string, Words>> = {
  stage: STAGE_WORDS,
  action: ACTION_WORDS,
  side: SIDES,
  purpose: PURPOSES,
  came_from: CAME_FROM,
  how: HOW,
  outcome: OUTCOMES,
  safety_checks: SAFETY,
  'flag.state': FLAG_STATES,
  'callback.state': CALL_STATES,
  'callback_mail.state': MAIL_STATES,
  'pick.state': PICK_STATES,
  'shelf_movement.kind': MOVEMENTS,
};

/** A code of that column in words of the trade; what is no code is given back as it is. */
export function sayCode(noun: string, column: string, value: string): string {
  if (noun === 'evidence' && column === 'kind') return evidenceWords(value);
  return (CODES[`${noun}.${column}`] ?? CODES[column])?.[value] ?? value;
}

/** A field of a piece of evidence under its label on the form of its kind, with a choice in the words it was offered in. */
export function sayEvidenceField(
  kind: unknown,
  name: string,
  value: string,
): { readonly label?: string; readonly value: string } {
  const field = EVIDENCE_FORMS[String(kind)]?.find((one) => one.name === name);
  if (!field) return { value };
  return { label: field.label, value: new Map(field.choices).get(value) ?? value };
}
