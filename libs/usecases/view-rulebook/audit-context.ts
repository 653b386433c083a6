import { whatWouldSettle, type EvidenceKind } from '../../build-date';
import { day, type Day } from '../../day';
import type { AuditContext, AuditLine } from '../../fit-rules';
import { preparedShop } from '../build-days/index';
import type { CatalogueShapes } from '../ports/catalogue-store';
import type { LineRow, Tables } from '../ports/index';

/** What a maker's own marks tell a build day by. */
const OF_THE_MAKER: readonly EvidenceKind[] = ['serial-scheme', 'printed-date'];

/** What an audit of this shop's rulebook must know besides the rules; a line still made is looked at up to the day. */
export async function auditContextOf(
  tables: Pick<Tables, 'catalogue' | 'bulletins'>,
  shapes: CatalogueShapes,
  at: { readonly inForceOn: Day; readonly knownAt: number },
): Promise<AuditContext> {
  const [lines, places, bulletins, shop] = await Promise.all([
    tables.catalogue.lines(),
    tables.bulletins.knownPlaces(),
    tables.bulletins.list(),
    preparedShop(tables),
  ]);
  const makers = new Map(lines.map(({ code, maker }) => [code, maker.code]));
  const schemesOf = (line: LineRow) => shop.schemes(line.maker.code, line.code).map(({ scheme }) => scheme.id);
  const canTellApart = (line: string, boundary: Day): boolean => {
    const cuts = [
      { days: [{ from: boundary - 1, to: boundary }], outcome: 'before' },
      { days: [{ from: boundary, to: boundary + 1 }], outcome: 'after' },
    ];
    const asked = { cuts, missing: OF_THE_MAKER, maker: makers.get(line)!, line, shop, today: at.inForceOn };
    return whatWouldSettle(asked).kinds.length > 0;
  };
  return {
    ...at,
    lines: lines.map((line) => auditLineOf(line, [...(places.get(line.code) ?? [])], schemesOf(line), at.inForceOn)),
    catalogue: new Set(shapes.numbers.keys()),
    withdrawnSources: new Set(bulletins.filter(({ state }) => state === 'withdrawn').map(({ key }) => key)),
    canTellApart,
  };
}

/** A line as the audit and the wall chart look at it. */
export function auditLineOf(
  { code, models, producedFrom, producedUntil }: LineRow,
  positions: readonly string[],
  schemes: readonly string[],
  until: Day,
): AuditLine {
  const from = day(producedFrom);
  const to = producedUntil === null ? Math.max(until, from) + 1 : day(producedUntil);
  return { line: code, positions, models: models.map(({ number }) => number), schemes, production: { from, to } };
}
