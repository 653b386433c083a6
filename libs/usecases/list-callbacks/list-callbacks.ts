import type { CallbackPage, CallbackView } from '../../contracts';
import { saySparesToo } from '../../fit-rules';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { CallbackQuery, CallbackRecord } from '../ports/callback-store';
import type { Ports } from '../run';

const PAGE = 100;

/** Callbacks within the person's sight: stop use first, then by the day of the next try, then oldest; at most a hundred. */
export async function listCallbacks(
  { store, clock }: Ports,
  actor: Actor,
  query: Omit<CallbackQuery, 'limit' | 'locationId' | 'today'>,
): Promise<CallbackPage> {
  const locationId = sightOf(actor);
  const { items, ...rest } = await store.transaction((tx) =>
    tx.callbacks.page({ ...query, today: clock.today(), limit: PAGE, locationId }),
  );
  return { ...rest, items: items.map(callbackView) };
}

export async function viewCallback({ store }: Ports, actor: Actor, id: number): Promise<Outcome<CallbackView>> {
  const found = (await store.callbacks.isAt(id, sightOf(actor))) ? await store.callbacks.find(id) : null;
  return found ? done(callbackView(found)) : refused('not-found', 'There is no callback with this number.');
}

/** The callback with what to say on the phone. */
export function callbackView(callback: CallbackRecord): CallbackView {
  return { ...callback, say: whatToSay(callback) };
}

function whatToSay({ urgent, unit, owner, reasons }: CallbackRecord): string {
  const live = reasons.filter((one) => one.withdrawn === null);
  const inUnit = live.filter((one) => !one.spare).map((one) => one.sentence);
  const spares = live.filter((one) => one.spare).map((one) => one.sentence);
  const sentences = new Set([...inUnit, ...(inUnit.length === 0 ? spares : spares.map(saySparesToo))]);
  const call = urgent
    ? 'Keep the plug lead off meanwhile. When can we see it?'
    : 'We would like to see it and put that right; when can you bring it in?';
  const who = owner.name === '' ? '' : ` for ${owner.name}`;
  return [`This is your repair shop with a call${who} about your ${unit.name}.`, ...sentences, call].join(' ');
}
