import type { LineSheetRow } from '../../../sheets';
import type { BulkLine, LineRow, WeighedRow } from '../../ports/index';
import { startRecompute } from '../../edit-shop-data/start-recompute';
import { added, alike, changed, problem, rejected, same, settled, type KindRun, type OpenKind } from '../kind-work';
import { SaidBefore } from '../said-before';
import { newRevision } from '../new-revision';

/** Product lines with their models. A model or an option that the file does not name stays. */
export const openLines: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const makers = new Set((await tx.catalogue.makers()).map(({ code }) => code));
  const known = new Map((await tx.catalogue.lines()).map((line) => [line.code, line]));
  const said = new SaidBefore();
  const touched = new Set<string>();
  let writes: BulkLine[] = [];
  const weigh = (n: number, row: LineSheetRow): WeighedRow => {
    const again = said.look(n, row.code, row, `line ${row.code}`);
    if (again) return again;
    if (!makers.has(row.maker))
      return rejected(
        n,
        problem('maker', 'not-on-file', `There is no maker "${row.maker}" on file; bring makers in first.`),
      );
    const before = known.get(row.code);
    if (before && before.maker.code !== row.maker)
      return rejected(
        n,
        problem('maker', 'conflict', `Line ${row.code} belongs to maker ${before.maker.code}, and stays there.`),
      );
    const line = lineOf(row, before);
    if (before && alike(asKept(before), line)) return same(n);
    writes.push(line);
    if (before) touched.add(row.code);
    return before ? changed(n) : added(n);
  };
  return {
    weigh(rows) {
      writes = [];
      return Promise.resolve(rows.map(({ n, values }) => weigh(n, values as unknown as LineSheetRow)));
    },
    write: () => tx.bulk.saveLines(writes),
    async finish() {
      await newRevision(tx, actor);
      return touched.size === 0 ? null : startRecompute(tx, actor, { lines: [...touched].sort(), evidence: null });
    },
  };
};

function lineOf(row: LineSheetRow, before?: LineRow): BulkLine {
  const models = merged(before?.models.map(({ number, name }) => ({ code: number, name })) ?? [], row.models ?? []);
  return {
    code: row.code,
    maker: row.maker,
    name: row.name,
    kind: settled(row.sort, before?.kind, ''),
    producedFrom: row.from,
    producedUntil: row.until === undefined ? (before?.producedUntil ?? null) : row.until,
    models: models.map(({ code, name }) => ({ number: code, name })),
    options: merged(before?.options ?? [], row.options ?? []),
  };
}

function asKept({ code, maker, name, kind, producedFrom, producedUntil, models, options }: LineRow): BulkLine {
  const named = models.map((model) => ({ number: model.number, name: model.name }));
  return { code, maker: maker.code, name, kind, producedFrom, producedUntil, models: named, options };
}

interface Named {
  readonly code: string;
  readonly name: string;
}

/** What is there keeps its place; the file's names win, and what it names besides comes after. */
function merged(kept: readonly Named[], given: readonly Named[]): Named[] {
  const names = new Map(given.map((one) => [one.code, one.name]));
  const there = new Set(kept.map(({ code }) => code));
  return [
    ...kept.map(({ code, name }) => ({ code, name: names.get(code) ?? name })),
    ...given.filter(({ code }, at) => !there.has(code) && given.findIndex((one) => one.code === code) === at),
  ];
}
