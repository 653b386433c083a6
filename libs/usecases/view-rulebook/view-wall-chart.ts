import type { PartRef, WallChartView } from '../../contracts';
import { formatDay } from '../../day';
import { compileRulebook, sayUnits, wallChart, type ChartRow, type ChartSpan, type Outcome } from '../../fit-rules';
import { preparedShop } from '../build-days/index';
import { done, refused, type Outcome as Answer } from '../outcome';
import type { PartRow } from '../ports/index';
import { partRefOf } from '../rule-on-unit/part-ref';
import { loadRulebook, type LoadedRulebook } from '../rulebook';
import type { Ports } from '../run';
import { auditLineOf } from './audit-context';
import { clocksOf } from './clocks';

/** The picture of one line's rules: what belongs in each position over the build dates of its whole production. */
export async function viewWallChart(
  { store, clock }: Ports,
  { line: code, ...asked }: { readonly line: string; readonly inForceOn?: string; readonly knownOn?: string },
): Promise<Answer<WallChartView>> {
  const row = await store.catalogue.lineByCode(code);
  if (!row) return refused('not-found', `There is no product line '${code}'.`);
  const [positions, shop, loaded] = await Promise.all([
    store.catalogue.positionsOf(row.id),
    preparedShop(store),
    loadRulebook(store, clock),
  ]);
  const clocks = clocksOf(asked, loaded);
  const codes = positions.map((position) => position.code);
  const schemes = shop.schemes(row.maker.code, code).map(({ scheme }) => scheme.id);
  const line = auditLineOf(row, codes, schemes, clocks.inForceOn);
  const chart = wallChart(compileRulebook(loaded.rulebook, clocks), line);
  const keys = [...new Set(chart.flatMap(({ spans }) => spans.flatMap(({ outcome }) => partsOf(outcome))))];
  const parts = new Map((await store.catalogue.partsByKeys(keys)).map((part) => [part.key, part]));
  return done({
    line: { code, name: row.name, maker: row.maker.name },
    ...clocks.said,
    revision: loaded.revision,
    production: { from: formatDay(line.production.from), to: formatDay(line.production.to) },
    rows: chart.map((one) => rowView(one, code, loaded, parts)),
  });
}

type Parts = ReadonlyMap<string, PartRow>;

function rowView({ position, where, spans }: ChartRow, line: string, { naming }: LoadedRulebook, parts: Parts) {
  return {
    position,
    positionName: naming.position(position, line),
    when: sayUnits(where),
    spans: spans.map((span) => spanView(span, parts, [...new Set(span.deciding.map(naming.rule))])),
  };
}

function spanView(
  { built, outcome }: ChartSpan,
  parts: Parts,
  papers: string[],
): WallChartView['rows'][number]['spans'][number] {
  const ref = (key: string): PartRef => partRefOf(key, parts);
  const required = outcome.kind === 'decided' ? outcome.saying.required : null;
  return {
    from: formatDay(built.from),
    to: formatDay(built.to),
    outcome: outcome.kind,
    required: required === null ? null : ref(required),
    allowed: [...new Set(namedBy(outcome))].filter((key) => key !== required).map(ref),
    barred: [...new Set(outcome.barred.map(({ part }) => part))].map(ref),
    papers,
  };
}

/** Every part that is required or allowed by what decides, or by one side of a dispute. */
function namedBy(outcome: Outcome): string[] {
  if (outcome.kind === 'nothing-said') return [];
  const sayings = outcome.kind === 'decided' ? [outcome.saying] : outcome.sayings;
  return sayings.flatMap(({ required, allowed }) => (required === null ? allowed : [required, ...allowed]));
}

function partsOf(outcome: Outcome): string[] {
  return [...namedBy(outcome), ...outcome.barred.map(({ part }) => part)];
}
