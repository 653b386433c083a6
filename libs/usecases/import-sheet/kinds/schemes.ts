import type { SerialScheme } from '../../../build-date';
import type { SchemeSheetRow } from '../../../sheets';
import { freeSchemeId, linesReadBy, readScheme } from '../../edit-shop-data/read-scheme';
import { startRecompute } from '../../edit-shop-data/start-recompute';
import type { SchemeRow, WeighedRow } from '../../ports/index';
import {
  added,
  alike,
  changed,
  problem,
  rejected,
  same,
  SaidBefore,
  settled,
  type KindRun,
  type OpenKind,
} from '../kind-work';

interface Write {
  readonly scheme: SerialScheme;
  readonly makerId: number;
  readonly before: SchemeRow | null;
}

/** Serial schemes; the units they can touch are dated anew and judged afterwards. */
export const openSchemes: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const catalogue = { makers: await tx.catalogue.makers(), lines: await tx.catalogue.lines() };
  const all = await tx.shopData.schemes();
  const taken = new Set(all.map(({ scheme }) => scheme.id));
  const touched = new Set<string>();
  const said = new SaidBefore();
  let writes: Write[] = [];
  const weigh = (n: number, row: SchemeSheetRow): WeighedRow => {
    const again = said.look(n, `${row.maker} ${row.name.toLowerCase()}`, row, `scheme ${row.name}`);
    if (again) return again;
    const isIt = ({ scheme }: SchemeRow) =>
      scheme.maker === row.maker && scheme.name.toLowerCase() === row.name.toLowerCase();
    const before = all.find(isIt) ?? null;
    const kept = before?.scheme;
    const id = kept?.id ?? freeSchemeId(row.maker, taken);
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
    taken.add(id);
    for (const one of kept ? [kept, scheme] : [scheme])
      for (const line of linesReadBy(one, catalogue)) touched.add(line);
    writes.push({ scheme, makerId: maker.id, before });
    return before ? changed(n) : added(n);
  };
  return {
    weigh(rows) {
      writes = [];
      return Promise.resolve(rows.map(({ n, values }) => weigh(n, values as unknown as SchemeSheetRow)));
    },
    async write() {
      for (const { scheme, makerId, before } of writes) {
        const kept = before
          ? await tx.shopData.updateScheme(before.id, before.version, scheme, actor.id)
          : (await tx.shopData.insertScheme(makerId, scheme, actor.id)) !== null;
        if (!kept) throw new Error(`serial scheme ${scheme.id} could not be kept`);
      }
    },
    finish: () => startRecompute(tx, actor, { lines: [...touched].sort(), evidence: null }),
  };
};

const FIELD_OF: Readonly<Record<string, string>> = {
  maker: 'maker',
  lines: 'lines',
  name: 'name',
  validFrom: 'from',
  validTo: 'until',
  source: 'source',
};
