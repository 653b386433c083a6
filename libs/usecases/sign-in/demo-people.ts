import type { DemoPeople } from '../../contracts';
import type { Ports } from '../run';

/** The setting that says that this shop is the demo, whose people's sign-ins are published anyway. */
export const DEMO_SHOP_SETTING = 'demo-shop';

/** True when the database was filled with the demo shop. */
export async function isDemoShop({ store }: Pick<Ports, 'store'>): Promise<boolean> {
  return (await store.settings.read(DEMO_SHOP_SETTING)) === true;
}

/** The people of the demo shop, so that the sign-in page can name them; nobody in a real shop. */
export async function listDemoPeople({ store }: Pick<Ports, 'store'>): Promise<DemoPeople> {
  if (!(await isDemoShop({ store }))) return [];
  return (await store.sessions.people()).map(({ login, name, role }) => ({ login, name, role }));
}
