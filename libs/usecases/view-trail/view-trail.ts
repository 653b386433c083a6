import type { TrailEntry, UnitTrail } from '../../contracts';
import { day, type Day } from '../../day';
import { sayRuling } from '../../fit-rules';
import { sightOf, type Actor } from '../actor';
import { factsOfUnit, type KnownOfUnit } from '../build-days/index';
import { done, refused, type Outcome } from '../outcome';
import type { StoredTrailEntry } from '../ports/trail-store';
import type { Ports } from '../run';
import { residentPapers, type Papers } from '../view-unit/index';
import { knownOtherwise, knownThen } from './known-then';

const PAGE = 200;

/**
 * Everything that was done about one unit that the person may see, in order, each with what was known at that moment
 * and, where it speaks of a place, with the ruling of that moment: by its papers, about the unit as it was known.
 */
export async function viewTrail(
  { store, clock }: Ports,
  actor: Actor,
  { unitId, after }: { readonly unitId: number; readonly after: string | null },
): Promise<Outcome<UnitTrail>> {
  const sight = sightOf(actor);
  const seen = sight === null || (await store.units.isAt(unitId, sight));
  const unit = seen ? await store.units.byId(unitId) : null;
  if (!unit) return refused('not-found', `There is no unit ${unitId} here.`);
  const [found, changes, papers] = await Promise.all([
    store.trail.ofUnit(unitId, after, PAGE),
    store.trail.knownChanges(unitId),
    residentPapers(store, clock),
  ]);
  const rulings = new RulingsThen(papers, unit);
  const then = knownThen(unit, changes);
  const items: TrailEntry[] = [];
  for (const { cursor, position, day: on, ...entry } of found) {
    const ruling = position === null ? null : await rulings.of(position, then(cursor), day(on), entry);
    items.push({ ...entry, ruling });
  }
  return done({ items, next: found.length === PAGE ? found.at(-1)!.cursor : null });
}

/** Rulings by the papers and the knowledge of then, each worked out once. */
class RulingsThen {
  private readonly said = new Map<KnownOfUnit, Map<string, string | null>>();

  constructor(
    private readonly papers: Papers,
    private readonly today: KnownOfUnit,
  ) {}

  async of(
    position: string,
    known: KnownOfUnit,
    on: Day,
    { at, revision }: Pick<StoredTrailEntry, 'at' | 'revision'>,
  ): Promise<TrailEntry['ruling']> {
    const then = { inForceOn: on, knownAt: Date.parse(at) };
    const sentence = await this.say(known, position, `${on} ${revision}`, then);
    if (sentence === null) return null;
    const sameToday = sentence === (await this.say(this.today, position, 'today'));
    return { sentence, sameToday, otherwise: knownOtherwise(known, this.today) };
  }

  /** Null where the unit was known to be of no line, or of one that has no such position. */
  private async say(
    known: KnownOfUnit,
    position: string,
    name: string,
    at?: { inForceOn: Day; knownAt: number },
  ): Promise<string | null> {
    const said = this.said.get(known) ?? new Map<string, string | null>();
    this.said.set(known, said);
    const key = `${position} ${name}`;
    if (!said.has(key)) said.set(key, await this.workOut(known, position, at));
    return said.get(key)!;
  }

  private async workOut(
    known: KnownOfUnit,
    position: string,
    at?: { inForceOn: Day; knownAt: number },
  ): Promise<string | null> {
    const facts = factsOfUnit(known);
    const positions = known.line ? await this.papers.positionsOf(known.line) : [];
    if (!facts || !positions.some(({ code }) => code === position)) return null;
    const { judge, naming } = this.papers.rulebook;
    return sayRuling(judge.ruling(facts, position, at), naming).join(' ');
  }
}
