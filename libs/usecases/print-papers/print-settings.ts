import { printSettings, USUAL_PRINTS, type PrintSettings } from '../../contracts';
import type { Actor } from '../actor';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';

/** Who the shop is on paper, on which paper, and in whose manner of writing. */
export const PRINTS = 'prints';

/** What the shop has settled about prints; the usual for whatever it has not. */
export async function printSettingsOf({ settings }: Pick<Tables, 'settings'>): Promise<PrintSettings> {
  const kept = (await settings.read(PRINTS)) as Partial<PrintSettings> | null;
  const read = printSettings.safeParse({ ...USUAL_PRINTS, ...kept });
  return read.success ? read.data : USUAL_PRINTS;
}

export async function viewPrintSettings({ store }: Pick<Ports, 'store'>): Promise<PrintSettings> {
  return printSettingsOf(store);
}

/** Changes no answer, so nothing is judged again. */
export async function changePrintSettings(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  wanted: PrintSettings,
): Promise<PrintSettings> {
  return store.transaction(async (tx) => {
    await tx.settings.write(PRINTS, wanted, actor.id);
    return printSettingsOf(tx);
  });
}
