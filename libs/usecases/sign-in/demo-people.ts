import { demoPeople, type DemoPeople } from '../../contracts';
import type { Ports } from '../run';

/** The people whom the demo shop made known; nobody in a real shop. */
export async function listDemoPeople({ store }: Pick<Ports, 'store'>): Promise<DemoPeople> {
  const value = (await store.settings.read('demo')) as { people?: unknown } | null;
  const read = demoPeople.safeParse(value?.people);
  return read.success ? read.data : [];
}
