import { PUBLISHED_STANDARD_EDITIONS } from '../../build-date';
import type { Ports } from '../run';

/** Gives every shop, from its first start on, the editions whose days are published. An entry a person changed stays. */
export async function addPublishedEditions({ store }: Pick<Ports, 'store'>): Promise<void> {
  await store.shopData.addMissingEditions(PUBLISHED_STANDARD_EDITIONS);
}
