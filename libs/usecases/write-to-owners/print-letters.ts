import { addressLabels, callbackLetters, callbackList, sayingIn, whyNotWritten } from '../../papers';
import { formatDay } from '../../day';
import type { CallbackList, CallbackView } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { callbackView } from '../list-callbacks/list-callbacks';
import { done, refused, type Outcome } from '../outcome';
import { printSettingsOf, type PrintedFile, type Printing } from '../print-papers';
import type { Ports } from '../run';

/** The letters of a batch in one file. Who has declined meanwhile, or whose callback is closed, gets none any more. */
export async function printLetters(ports: Printing, actor: Actor, batch: string): Promise<Outcome<PrintedFile>> {
  const callbacks = await ofBatch(ports, actor, batch);
  if (callbacks.length === 0) return noLetters();
  const settings = await printSettingsOf(ports.store);
  const about = { say: sayingIn(settings.manner, ports.zone), today: formatDay(ports.clock.today()) };
  return done({ name: 'letters.pdf', bytes: await ports.press.print(callbackLetters(callbacks, settings, about)) });
}

/** The address labels of a batch, on sheets as the shop has them. */
export async function printLabels(ports: Printing, actor: Actor, batch: string): Promise<Outcome<PrintedFile>> {
  const callbacks = await ofBatch(ports, actor, batch);
  if (callbacks.length === 0) return noLetters();
  const settings = await printSettingsOf(ports.store);
  return done({ name: 'labels.pdf', bytes: await ports.press.printLabels(addressLabels(callbacks, settings)) });
}

async function ofBatch({ store }: Ports, actor: Actor, batch: string): Promise<readonly CallbackView[]> {
  const found = (await store.callbacks.ofBatch(batch, sightOf(actor))).map(callbackView);
  return found.filter((callback) => whyNotWritten(callback, 'letter') === null);
}

const noLetters = () => refused('not-found', 'There are no letters of this batch to print.');

const MOST_ROWS = 10_000;

/** A list of callbacks as a table for another program. */
export async function exportCallbacks({ store, clock }: Ports, actor: Actor, state: CallbackList): Promise<string> {
  const asked = { state, urgentOnly: false, after: null, today: clock.today() };
  const page = await store.callbacks.page({ ...asked, limit: MOST_ROWS, locationId: sightOf(actor) });
  return callbackList(page.items.map(callbackView));
}
