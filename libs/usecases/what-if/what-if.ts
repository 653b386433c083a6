import type { WhatIf } from '../../contracts';
import { auditRulebook, namingFor, newFindings, type Rulebook } from '../../fit-rules';
import { judgeInstall, lookBackFrom, planConsequences } from '../judge-installs';
import { partsTouched, shelfShareOf } from '../note-parts/index';
import { done, refused, type Outcome } from '../outcome';
import { sourceOf } from '../publish-bulletin/source-of';
import {
  applyDraft,
  catalogueNames,
  changesBy,
  dayOfChanges,
  loadRulebook,
  makeRulebook,
  recheckScopeOf,
  type LoadedRulebook,
} from '../rulebook';
import type { Ports } from '../run';
import { auditContextOf } from '../view-rulebook/audit-context';
import { Tally } from './tally';

/** Every install of a page is judged with its reasons and held in memory. */
const UNITS_A_PAGE = 1_000;

/**
 * What publishing a draft would bring, from the code that would run, judged by the unpublished rulebook in memory.
 * Nothing is written. A bulletin dated ahead is judged as if its day had come.
 */
export async function whatIf(ports: Ports, id: number): Promise<Outcome<WhatIf>> {
  const { store, clock } = ports;
  const bulletin = await store.bulletins.find(id);
  if (!bulletin) return refused('not-found', 'There is no bulletin with this number.');
  if (bulletin.state !== 'draft')
    return refused('already-done', `Bulletin ${bulletin.number} is ${bulletin.state}; "what if" is for drafts.`);
  const before = await loadRulebook(store, clock);
  const at = Math.max(before.now, (await store.rulebook.latest()).now) + 1;
  const applied = applyDraft(before.rulebook, sourceOf(bulletin), bulletin.draft ?? { opens: [], ends: [] }, at);
  if (!applied.ok) return refused('bad-input', applied.problems.join(' '), { field: 'draft' });
  const { opens, changed, rulebook } = applied.value;
  const day = dayOfChanges(before.today, applied.value);
  const after = makeRulebook(
    rulebook,
    { revision: before.revision, now: at },
    day,
    before.shapes,
    before.strengths.threshold,
  );
  const scope = recheckScopeOf(
    changesBy(
      day,
      changed.filter((rule) => !opens.includes(rule)),
      opens,
    ),
  );
  const windowFrom = await lookBackFrom(store, before.today);
  const readFrom = scope.ignoresLookBack ? null : windowFrom;
  const tally = new Tally();
  for (let from = 0; ;) {
    const page = await store.installs.nextUnits(scope, readFrom, from, UNITS_A_PAGE);
    if (page === null) break;
    const held = await store.installs.held({ scope, ...page, lookBackFrom: readFrom });
    const standing = await store.installs.consequences([...new Set(held.map(({ unit }) => unit.id))]);
    const judged = held.map((install) => judgeInstall(install, after));
    const about = { today: day, lookBackFrom: windowFrom, wholeUnits: false, because: '' };
    tally.add(planConsequences(judged, standing, about), standing);
    from = page.toUnit;
  }
  const touched = partsTouched(before, { rulebook, now: at }, { ...applied.value, day }, before.naming);
  const shelf = await shelfShareOf(store, touched);
  return done({ ...(await answer(ports, tally, before, rulebook, day, at)), shelf });
}

async function answer(
  { store }: Ports,
  tally: Tally,
  before: LoadedRulebook,
  after: Rulebook,
  inForceOn: number,
  knownAt: number,
): Promise<Omit<WhatIf, 'shelf'>> {
  const names = await store.installs.names(tally.first);
  const context = await auditContextOf(store, before.shapes, { inForceOn, knownAt });
  const audit = (rulebook: Rulebook) =>
    auditRulebook(rulebook, context, namingFor(rulebook, catalogueNames(before.shapes)));
  const findings = newFindings(audit(before.rulebook), audit(after));
  return {
    revision: before.revision,
    ...tally.counts(),
    first: names.map(({ unit, owner, position, placeName }, i) => {
      const { from, to } = tally.first[i]!;
      return { unit, owner, position, placeName, from: from ?? 'not judged', to };
    }),
    findings: findings.map(({ severity, sentence, line, position }) => ({
      severity,
      sentence,
      line: line ?? '',
      position,
    })),
  };
}
