import type { TrailEntry, UnitTrail } from '../../contracts';
import { day, type Day } from '../../day';
import { sayRuling } from '../../fit-rules';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { StoredTrailEntry } from '../ports/trail-store';
import type { Ports } from '../run';
import { loadUnit, type WholeUnit } from '../view-unit';

const PAGE = 200;

/**
 * Everything that was done about one unit that the person may see, in order, each with what was known at that moment
 * and, where it speaks of a place, with the ruling of that moment.
 */
export async function viewTrail(
  { store, clock }: Ports,
  actor: Actor,
  { unitId, after }: { readonly unitId: number; readonly after: string | null },
): Promise<Outcome<UnitTrail>> {
  const sight = sightOf(actor);
  const seen = sight === null || (await store.units.isAt(unitId, sight));
  const whole = seen ? await loadUnit(store, clock, unitId) : null;
  if (!whole) return refused('not-found', `There is no unit ${unitId} here.`);
  const found = await store.trail.ofUnit(unitId, after, PAGE);
  const rulingThen = rulingsOf(whole);
  const items = found.map(({ cursor: _, position, day: on, ...entry }) => {
    return { ...entry, ruling: position === null ? null : rulingThen(position, day(on), entry) };
  });
  return done({ items, next: found.length === PAGE ? found.at(-1)!.cursor : null });
}

/** Rulings by the papers and the knowledge of then, each worked out once. */
function rulingsOf({ facts, positions, rulebook: { judge, naming } }: WholeUnit) {
  const said = new Map<string, string>();
  const say = (position: string, name: string, at?: { inForceOn: Day; knownAt: number }): string => {
    const key = `${position} ${name}`;
    const known = said.get(key) ?? sayRuling(judge.ruling(facts!, position, at), naming).join(' ');
    said.set(key, known);
    return known;
  };
  return (position: string, on: Day, { at, revision }: StoredInstant): TrailEntry['ruling'] => {
    // A unit that has become one of another line since has no such position any more.
    if (!facts || !positions.has(position)) return null;
    const sentence = say(position, `${on} ${revision}`, { inForceOn: on, knownAt: Date.parse(at) });
    return { sentence, sameToday: sentence === say(position, 'today') };
  };
}

type StoredInstant = Pick<StoredTrailEntry, 'at' | 'revision'>;
