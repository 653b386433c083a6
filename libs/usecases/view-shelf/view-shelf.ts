import type { ShelfPage } from '../../contracts';
import type { Actor } from '../actor';
import { shelfIsKept } from '../keep-shelf/index';
import type { ShelfFilter } from '../ports/shelf-store';
import type { Ports } from '../run';
import { searchTerms } from '../view-board/index';

const PAGE = 100;

/** What lies on the shelf of the person's location, by bin; a part is found by its number in any writing. */
export async function viewShelf(
  { store }: Ports,
  { locationId }: Actor,
  { q, only, after = 0 }: { q?: string; only?: ShelfFilter['only']; after?: number },
): Promise<ShelfPage> {
  const terms = q ? await searchTerms(store, q) : null;
  const about = { locationId, keys: terms?.partKeys ?? [], text: terms?.text ?? null, only: only ?? null };
  const [kept, { total, items }] = await Promise.all([
    shelfIsKept(store),
    store.shelf.list({ ...about, offset: after, limit: PAGE }),
  ]);
  const read = after + items.length;
  return { kept, total, items: [...items], next: read < total && items.length > 0 ? read : null };
}
