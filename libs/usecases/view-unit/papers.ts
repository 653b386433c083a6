import type { PreparedShop } from '../../build-date';
import { ResidentCatalogue } from '../browse-catalogue/index';
import { preparedShop } from '../build-days/index';
import type { Clock } from '../clock';
import type { LineRow, PartRow, PositionRow, ShopMark, Tables } from '../ports/index';
import { loadRulebook, rulebookAt, thresholdOf, type LoadedRulebook } from '../rulebook';

/** What units are judged and named by: the rulebook, the makers' serial schemes, and the catalogue. */
export interface Papers {
  readonly rulebook: LoadedRulebook;
  readonly shop: PreparedShop;
  readonly positionsOf: (line: Pick<LineRow, 'id'>) => Promise<readonly PositionRow[]>;
  /** Those of the parts that there are. */
  readonly partsByIds: (ids: readonly number[]) => Promise<readonly PartRow[]>;
  readonly partsByKeys: (keys: readonly string[]) => Promise<readonly PartRow[]>;
}

/** Read now; in a transaction the rulebook is held still with it, so that nothing is judged by papers already replaced. */
export async function papersOf(tables: Tables, clock: Clock): Promise<Papers> {
  const [shop, rulebook] = await Promise.all([preparedShop(tables), loadRulebook(tables, clock)]);
  const { catalogue } = tables;
  return {
    shop,
    rulebook,
    positionsOf: ({ id }) => catalogue.positionsOf(id),
    partsByIds: (ids) => catalogue.partsByIds(ids),
    partsByKeys: (keys) => catalogue.partsByKeys(keys),
  };
}

/**
 * For looking only, outside of a transaction: one short question tells whether what was read before still stands, and
 * then nothing of it is read again.
 */
export async function residentPapers(tables: Tables, clock: Clock): Promise<Papers> {
  return papersAt(tables, clock, await tables.catalogue.mark());
}

/** The same by a mark that was just read. */
export async function papersAt(tables: Tables, clock: Clock, mark: ShopMark): Promise<Papers> {
  const catalogue = ResidentCatalogue.at(tables, mark);
  const [shop, rulebook] = await Promise.all([
    catalogue.shop(),
    rulebookAt(tables, mark.rulebook, clock.today(), thresholdOf(mark.threshold)),
  ]);
  return {
    shop,
    rulebook,
    positionsOf: (line) => catalogue.positionsOf(line),
    partsByIds: (ids) => catalogue.partsByIds(ids),
    partsByKeys: async (keys) => {
      const parts = await catalogue.parts(keys);
      return keys.flatMap((key) => parts.get(key) ?? []);
    },
  };
}
