import { moneySettings, type MoneySettings } from '../../contracts';
import { NO_TAX } from '../../ticket';
import type { Actor } from '../actor';
import { CURRENCY, MONEY } from '../ports/session-store';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';

const parts = moneySettings.pick({ tax: true, hourMinor: true });

/** The shop's currency, tax and hour; without settings euros, no tax, and nothing for an hour. */
export async function moneySettingsOf({ settings }: Pick<Tables, 'settings'>): Promise<MoneySettings> {
  const [currency, money] = await Promise.all([settings.read(CURRENCY), settings.read(MONEY)]);
  const read = parts.safeParse(money);
  const { tax, hourMinor } = read.success ? read.data : { tax: NO_TAX, hourMinor: 0 };
  return { currency: typeof currency === 'string' ? currency : 'EUR', tax, hourMinor };
}

export function viewMoney({ store }: Pick<Ports, 'store'>): Promise<MoneySettings> {
  return moneySettingsOf(store);
}

/** Settles currency, tax and hour. Estimates written down before keep theirs. */
export async function changeMoney(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { currency, tax, hourMinor }: MoneySettings,
): Promise<MoneySettings> {
  return store.transaction(async (tx) => {
    await tx.settings.write(CURRENCY, currency, actor.id);
    await tx.settings.write(MONEY, { tax, hourMinor }, actor.id);
    return moneySettingsOf(tx);
  });
}
