import { printSettings, USUAL_PRINTS, type PrintSettings, type SettledPrints } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';
import { settled } from '../settled';

/** Who the shop is on paper, on which paper, and in whose manner of writing. */
export const PRINTS = 'prints';

/** What the shop has settled about prints; the usual for whatever it has not. */
export async function printSettingsOf({ settings }: Pick<Tables, 'settings'>): Promise<PrintSettings> {
  return readPrints(await settings.read(PRINTS));
}

/** The setting as it is kept, made whole with the usual. */
function readPrints(kept: unknown): PrintSettings {
  const read = printSettings.safeParse({ ...USUAL_PRINTS, ...(kept as Partial<PrintSettings> | null) });
  return read.success ? read.data : USUAL_PRINTS;
}

export function viewPrintSettings({ store }: Pick<Ports, 'store'>): Promise<SettledPrints> {
  return settledPrints(store);
}

/** Changes no answer, so nothing is judged again. */
export async function changePrintSettings(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { version, ...wanted }: PrintSettings & { readonly version: number },
): Promise<Outcome<SettledPrints>> {
  return store.transaction(async (tx) => {
    if (!(await tx.settings.claim([PRINTS], version)))
      return refused('stale', 'How prints look was changed by somebody else meanwhile; look again.', {
        current: await settledPrints(tx),
      });
    await tx.settings.write(PRINTS, wanted, actor.id);
    return done(await settledPrints(tx));
  });
}

function settledPrints(tables: Pick<Tables, 'settings'>): Promise<SettledPrints> {
  return settled(tables, [PRINTS], () => printSettingsOf(tables));
}
