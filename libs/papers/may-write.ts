import type { CallbackView, ContactWay } from '../contracts';

/** One address, nothing that could begin a second header or a second recipient. */
const ONE_ADDRESS = /^[^\s@<>()[\],;:"\\]{1,64}@[A-Za-z0-9.-]{1,190}\.[A-Za-z]{2,}$/;

/** Why an owner is not written to in that way, in a sentence; null where they may be. */
export function whyNotWritten({ state, owner }: CallbackView, way: Exclude<ContactWay, 'phone'>): string | null {
  if (state !== 'open' && state !== 'booked') return 'The callback is closed.';
  if (!owner.consent) return 'The owner has not agreed to be contacted.';
  if (owner.declined.includes(way)) return `The owner does not want ${way === 'letter' ? 'letters' : 'e-mails'}.`;
  if (way === 'letter') return owner.address.trim() === '' ? 'No address is known.' : null;
  if (owner.email.trim() === '') return 'No e-mail address is known.';
  return ONE_ADDRESS.test(owner.email.trim()) ? null : 'The e-mail address cannot be one; look at it again.';
}
