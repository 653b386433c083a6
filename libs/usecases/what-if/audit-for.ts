import { day, formatDay } from '../../day';
import { auditRulebook, namingFor, type Finding, type Rulebook } from '../../fit-rules';
import type { Store } from '../ports/store';

/** An audit that knows the shop's lines: give it a rulebook, and it answers the findings. */
export async function auditFor(
  store: Store,
  inForceOn: number,
  knownAt: number,
): Promise<(rulebook: Rulebook) => readonly Finding[]> {
  const [lines, places, bulletins] = [
    await store.catalogue.lines(),
    await store.bulletins.knownPlaces(),
    await store.bulletins.list(),
  ];
  const context = {
    inForceOn,
    knownAt,
    lines: lines.map(({ code, models, producedFrom, producedUntil }) => ({
      line: code,
      positions: [...(places.get(code) ?? [])],
      models: models.map(({ number }) => number),
      schemes: [],
      production: { from: day(producedFrom), to: day(producedUntil ?? formatDay(inForceOn + 1)) },
    })),
    catalogue: null,
    withdrawnSources: new Set(bulletins.filter(({ state }) => state === 'withdrawn').map(({ key }) => key)),
  };
  return (rulebook) => auditRulebook(rulebook, context, namingFor(rulebook));
}
