import { moneySettings, type MoneySettings, type SettledMoney } from '../../contracts';
import { NO_TAX } from '../../ticket';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import { CURRENCY, MONEY } from '../ports/session-store';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';
import { settled } from '../settled';

/** What is settled together, on one version. */
const SETTLED = [CURRENCY, MONEY];

const parts = moneySettings.pick({ tax: true, hourMinor: true });

async function moneySettingsOf({ settings }: Pick<Tables, 'settings'>): Promise<MoneySettings> {
  const [currency, money] = await Promise.all([settings.read(CURRENCY), settings.read(MONEY)]);
  return moneySettingsFrom({ [CURRENCY]: currency, [MONEY]: money });
}

/** The shop's currency, tax and hour, of the settings by their keys; without them euros, no tax, nothing for an hour. */
export function moneySettingsFrom({
  [CURRENCY]: currency,
  [MONEY]: money,
}: Readonly<Record<string, unknown>>): MoneySettings {
  const read = parts.safeParse(money);
  const { tax, hourMinor } = read.success ? read.data : { tax: NO_TAX, hourMinor: 0 };
  return { currency: typeof currency === 'string' ? currency : 'EUR', tax, hourMinor };
}

export function viewMoney({ store }: Pick<Ports, 'store'>): Promise<SettledMoney> {
  return settledMoney(store);
}

/** Settles currency, tax and hour. Estimates written down before keep theirs. */
export async function changeMoney(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { version, currency, tax, hourMinor }: MoneySettings & { readonly version: number },
): Promise<Outcome<SettledMoney>> {
  return store.transaction(async (tx) => {
    if (!(await tx.settings.claim(SETTLED, version)))
      return refused('stale', 'The money settings were changed by somebody else meanwhile; look again.', {
        current: await settledMoney(tx),
      });
    await tx.settings.write(CURRENCY, currency, actor.id);
    await tx.settings.write(MONEY, { tax, hourMinor }, actor.id);
    return done(await settledMoney(tx));
  });
}

function settledMoney(tables: Pick<Tables, 'settings'>): Promise<SettledMoney> {
  return settled(tables, SETTLED, () => moneySettingsOf(tables));
}
