import { prepareShop, type PreparedShop } from '../../build-date';
import type { Tables } from '../ports/index';

const prepared = new WeakMap<object, PreparedShop>();

/** Serial schemes and editions ready for reading; made once for as long as the store answers the same data. */
export async function preparedShop({ catalogue }: Pick<Tables, 'catalogue'>): Promise<PreparedShop> {
  const data = await catalogue.shopData();
  const known = prepared.get(data);
  if (known) return known;
  const shop = prepareShop(data);
  prepared.set(data, shop);
  return shop;
}
