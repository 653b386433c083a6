import type { CallbackView, PrintSettings } from '../contracts';
import { OWNERS_CAUTION } from './cautions';
import type { Block, Labels, Paper } from './paper';
import { LABEL_LAYOUTS } from './label-sheets';
import type { Saying } from './saying';

/** What stands in a letter or an e-mail about a callback: the same facts in the same words. */
export interface CallbackWords {
  readonly subject: string;
  readonly greeting: string;
  readonly paragraphs: readonly string[];
  readonly farewell: string;
}

/** Says to an owner which unit it is about, what changed, what to do meanwhile, and how to reach the shop. */
export function callbackWords({ unit, owner, urgent, reasons }: CallbackView, settings: PrintSettings): CallbackWords {
  const serial = unit.serial === null ? '' : `, serial ${unit.serial}`;
  const sentences = [...new Set(reasons.filter((one) => one.withdrawn === null).map((one) => one.sentence))];
  const reach = [settings.phone && `call ${settings.phone}`, settings.email && `write to ${settings.email}`].filter(
    Boolean,
  );
  return {
    subject: urgent ? `Please stop using your ${unit.name} and call us` : `About your ${unit.name}: please call us`,
    greeting: owner.name === '' ? 'Good day,' : `Dear ${owner.name},`,
    paragraphs: [
      `We repaired your ${unit.name}${serial}. Since then the papers of its maker have changed.`,
      ...sentences,
      urgent
        ? 'Please do not use it until we have seen it, and keep the key or the plug lead off meanwhile.'
        : 'We would like to see it and put that right.',
      reach.length === 0 ? 'Please call us.' : `To agree on a day, please ${reach.join(' or ')}.`,
    ],
    farewell: settings.shopName === '' ? 'Your repair shop' : settings.shopName,
  };
}

/** Letters to these owners, each on a sheet of its own, in one print. */
export function callbackLetters(
  callbacks: readonly CallbackView[],
  settings: PrintSettings,
  { say, today }: { readonly say: Saying; readonly today: string },
): Paper {
  return {
    title: `Letters of ${say.day(today)}`,
    size: settings.paper,
    foot: [settings.shopName, settings.phone].filter(Boolean).join(' · '),
    pages: callbacks.map((callback) => letter(callback, settings, say.day(today))),
  };
}

function letter(callback: CallbackView, settings: PrintSettings, day: string): Block[] {
  const { subject, greeting, paragraphs, farewell } = callbackWords(callback, settings);
  const from = [settings.shopName, settings.address].filter(Boolean).join(', ');
  return [
    { kind: 'address', from, lines: addressLines(callback) },
    { kind: 'text', line: day },
    { kind: 'heading', text: subject },
    ...[greeting, ...paragraphs].map((line) => ({ kind: 'text' as const, line })),
    { kind: 'caution', text: OWNERS_CAUTION },
    { kind: 'text', line: farewell },
  ];
}

/** A label for each of these owners. */
export function addressLabels(callbacks: readonly CallbackView[], settings: PrintSettings): Labels {
  return { title: 'Address labels', layout: LABEL_LAYOUTS[settings.labels], labels: callbacks.map(addressLines) };
}

/** Name, then the address by its lines: as it was typed, or cut at commas. */
export function addressLines({ owner }: CallbackView): string[] {
  return [owner.name, ...owner.address.split(/\r?\n|,/)].map((one) => one.trim()).filter((one) => one !== '');
}
