import { KEEP_SHELF } from '../ports/session-store';
import type { Tables } from '../ports/store';

/** Whether the shop keeps a shelf that is counted. A shop that has said nothing keeps none, and nothing stops it. */
export async function shelfIsKept(tables: Pick<Tables, 'settings'>): Promise<boolean> {
  return (await tables.settings.read(KEEP_SHELF)) === true;
}
