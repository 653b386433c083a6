import type { CallbackView, PrintSettings } from '../contracts';
import { callbackWords } from './callback-letter';
import { OWNERS_CAUTION } from './cautions';

/** An e-mail as it is handed over: one recipient, plain text and the same as simple HTML. */
export interface MailWords {
  readonly recipient: string;
  readonly subject: string;
  readonly text: string;
  readonly html: string;
}

/** The e-mail to the owner of a callback. Values are data in it, whatever they hold: see {@link escapeHtml}, {@link oneLine}. */
export function callbackMail(callback: CallbackView, settings: PrintSettings): MailWords {
  const { subject, greeting, paragraphs, farewell } = callbackWords(callback, settings);
  const why =
    'You get this because you agreed to be told when the answer for your unit changes. Tell us if you no longer want it.';
  const parts = [greeting, ...paragraphs, OWNERS_CAUTION, farewell, why];
  return {
    recipient: callback.owner.email.trim(),
    subject: oneLine(subject),
    text: `${parts.map(oneLine).join('\n\n')}\n`,
    html: `<!doctype html><html lang="en"><body>${parts.map((one) => `<p>${escapeHtml(oneLine(one))}</p>`).join('')}</body></html>`,
  };
}

/** A letter to see whether letters arrive: who sent it, and that nothing is to be done about it. */
export function trialMail(recipient: string, { shopName }: PrintSettings): MailWords {
  const shop = oneLine(shopName) || 'The shop';
  const text = `${shop} tries out its mail server. This letter has arrived; nothing is to be done about it.`;
  return {
    recipient,
    subject: `A trial letter of ${shopName === '' ? 'the shop' : shop}`,
    text: `${text}\n`,
    html: `<!doctype html><html lang="en"><body><p>${escapeHtml(text)}</p></body></html>`,
  };
}

/** Text without anything that ends a line or is no character: what stands in a header stays in that header. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').trim();
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as HTML that shows just that text. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}
