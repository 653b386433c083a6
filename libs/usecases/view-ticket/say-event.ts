import { sayDay, parseDay } from '../../day';
import { decimal, STAGE_WORDS, type Destination } from '../../ticket';
import type { EventRow } from '../ports/index';

type Data = EventRow['data'];

/** What happened, in one sentence for the ticket's history. A kind without words of its own is shown by its name. */
export function sayEvent({ kind, data }: Pick<EventRow, 'kind' | 'data'>): string {
  return SENTENCES[kind]?.(data) ?? kind;
}

const text = (data: Data, key: string): string => {
  const value = data[key];
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};
const because = (data: Data): string => (text(data, 'reason') === '' ? '' : `: ${text(data, 'reason')}`);
const stage = (data: Data, key: string): string => STAGE_WORDS[text(data, key) as Destination] ?? text(data, key);
const benchIn = (data: Data, key: string): string => (text(data, key) === '' ? 'no bench' : `bench ${text(data, key)}`);
const upTo = (data: Data): string =>
  text(data, 'revision') === ''
    ? ''
    : `, up to ${decimal(Number(text(data, 'amountMinor')))}, on revision ${text(data, 'revision')} of the estimate`;
const until = (data: Data): string => {
  const day = parseDay(text(data, 'until'));
  return day === null ? '' : ` until ${sayDay(day)}`;
};

const binWords = (data: Data): string => (text(data, 'bin') === '' ? '' : `, bin ${text(data, 'bin')}`);

const SENTENCES: Readonly<Record<string, (data: Data) => string>> = {
  opened: () => 'Ticket opened.',
  tag: () => 'Tag changed.',
  bench: (data) => `Moved from ${benchIn(data, 'from')} to ${benchIn(data, 'to')}.`,
  identity: (data) => `Unit identified${because(data)}.`,
  evidence: (data) => `Evidence recorded: ${text(data, 'kind').replace(/-/g, ' ')}.`,
  'evidence-set-aside': (data) => `Evidence set aside (${text(data, 'kind').replace(/-/g, ' ')})${because(data)}.`,
  'evidence-taken-up': (data) => `Evidence taken up again (${text(data, 'kind').replace(/-/g, ' ')}).`,
  warranty: (data) =>
    text(data, 'boughtOn') === ''
      ? 'Day of purchase and warranty taken back.'
      : `Warranty: bought ${sayDay(parseDay(text(data, 'boughtOn'))!)}, ${text(data, 'months')} months.`,
  'note-settled': (data) => `Note for this visit settled${because(data)}. It said: ${text(data, 'note')}`,
  found: (data) => `As found: ${text(data, 'what')}.`,
  left: (data) => `As left: ${text(data, 'what')}.`,
  picked: (data) => `Picked ${text(data, 'quantity')} x ${text(data, 'part')} ${text(data, 'for')}${because(data)}.`,
  'part-here': (data) => `Came in: ${text(data, 'quantity')} x ${text(data, 'part')}${binWords(data)}.`,
  waits: (data) => `Waits for ${text(data, 'quantity')} x ${text(data, 'part')}.`,
  'waits-no-more': (data) => `No longer waits for ${text(data, 'part')}.`,
  'spare-back': (data) => `The owner handed back ${text(data, 'quantity')} x ${text(data, 'part')}.`,
  returned: (data) => `Returned to the shelf: ${text(data, 'quantity')} x ${text(data, 'part')}.`,
  labour: (data) => `Labour set to ${text(data, 'minutes')} min.`,
  estimate: (data) => `Estimate written down, revision ${text(data, 'revision')}: ${text(data, 'total')}.`,
  authorised: (data) =>
    `${text(data, 'by')} authorised the work (${text(data, 'how').replace(/-/g, ' ')})${upTo(data)}.`,
  photo: (data) =>
    `Photo taken at ${text(data, 'stage')}${text(data, 'caption') === '' ? '' : `: ${text(data, 'caption')}`}.`,
  'photo-removed': (data) => `Photo taken away${because(data)}.`,
  safety: (data) => `Safety points ticked: ${text(data, 'ticked')} of ${text(data, 'of')}.`,
  moved: (data) => `Moved from ${stage(data, 'from')} to ${stage(data, 'to')}.`,
  'moved-back': (data) => `Moved back from ${stage(data, 'from')} to ${stage(data, 'to')}${because(data)}.`,
  'owner-erased': (data) => `What was known of the owner was erased${because(data)}.`,
  held: (data) => `Put on hold${because(data)}.`,
  resumed: () => 'Resumed.',
  cancelled: (data) => `Cancelled${because(data)}.`,
  'handed-over': () => 'Handed over to the owner.',
  'brought-in': () => 'Brought in from a spreadsheet.',
  'flag-accepted': (data) => `Flag accepted${until(data)} (${text(data, 'place')})${because(data)}.`,
  'flag-sent-back': (data) => `Flag sent back to the bench (${text(data, 'place')})${because(data)}.`,
  'flag-callback': (data) => `Callback ordered (${text(data, 'place')})${because(data)}.`,
};
