import type { SchemeSheetRow } from '../../../sheets';
import { FreeSchemeIds, linesReadBy, readScheme } from '../../edit-shop-data/read-scheme';
import { startRecompute } from '../../edit-shop-data/start-recompute';
import type { BulkScheme, WeighedRow } from '../../ports/index';
import { ImportRefused } from '../import-refused';
import { added, alike, changed, problem, rejected, same, settled, type KindRun, type OpenKind } from '../kind-work';
import { SaidBefore } from '../said-before';

/** Serial schemes; the units they can touch are dated anew and judged afterwards. */
export const openSchemes: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const catalogue = { makers: await tx.catalogue.makers(), lines: await tx.catalogue.lines() };
  const all = await tx.shopData.schemes();
  const byName = new Map(all.map((row) => [nameOf(row.scheme), row]));
  const ids = new FreeSchemeIds(all.map(({ scheme }) => scheme.id));
  const touched = new Set<string>();
  const said = new SaidBefore();
  let writes: BulkScheme[] = [];
  const weigh = (n: number, row: SchemeSheetRow): WeighedRow => {
    const again = said.look(n, nameOf(row), row, `scheme ${row.name}`);
    if (again) return again;
    const before = byName.get(nameOf(row)) ?? null;
    const kept = before?.scheme;
    const id = kept?.id ?? ids.next(row.maker);
    const typed = {
      maker: row.maker,
      name: row.name,
      lines: [...settled(row.lines, kept?.lines, [])],
      validFrom: row.from === undefined ? (kept?.validFrom ?? null) : row.from,
      validTo: row.until === undefined ? (kept?.validTo ?? null) : row.until,
      fields: [...row.fields],
      source: settled(row.source, kept?.source, 'common practice, no source'),
    };
    const read = readScheme(typed, id, catalogue);
    if (!read.ok)
      return rejected(
        n,
        problem(FIELD_OF[read.refusal.field?.split('.')[1] ?? ''] ?? 'fields', 'not-accepted', read.refusal.detail),
      );
    const { scheme, maker } = read.value;
    if (kept && alike(kept, scheme)) return same(n);
    ids.take(id);
    for (const one of kept ? [kept, scheme] : [scheme])
      for (const line of linesReadBy(one, catalogue)) touched.add(line);
    writes.push({ scheme, makerId: maker.id, before: before && { id: before.id, version: before.version } });
    return before ? changed(n) : added(n);
  };
  return {
    weigh(rows) {
      writes = [];
      return Promise.resolve(rows.map(({ n, values }) => weigh(n, values as unknown as SchemeSheetRow)));
    },
    async write() {
      const kept = await tx.bulk.saveSchemes(writes, actor.id);
      if (kept < writes.length)
        throw new ImportRefused('A serial scheme was changed meanwhile; look at the file again.');
    },
    finish: () => startRecompute(tx, actor, { lines: [...touched].sort(), evidence: null }),
  };
};

/** Maker and name tell one scheme from another. */
const nameOf = ({ maker, name }: { maker: string; name: string }): string => `${maker} ${name.toLowerCase()}`;

const FIELD_OF: Readonly<Record<string, string>> = {
  maker: 'maker',
  lines: 'lines',
  name: 'name',
  validFrom: 'from',
  validTo: 'until',
  source: 'source',
};
