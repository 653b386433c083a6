import { writeFitRule, type FitRule } from '../../fit-rules';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { BulletinRecord } from '../ports/bulletin-store';
import type { Tables } from '../ports/store';
import type { Clock } from '../clock';
import { noteParts, partsTouched } from '../note-parts/index';
import {
  applyDraft,
  changesBy,
  dayOfChanges,
  loadRulebook,
  recheckScopeOf,
  type DraftChanges,
  type LoadedRulebook,
} from '../rulebook';
import type { Ports } from '../run';
import { sourceOf } from './source-of';
import { startRecheck } from './start-recheck';

export interface PublishInput {
  readonly id: number;
  readonly version: number;
  /**
   * The rulebook revision that the what-if was shown on. Publishing is refused when the rulebook has moved on since, for
   * then what was shown is not what would happen. Left out by programs that publish with nobody looking.
   */
  readonly whatIfRevision?: number;
}

/**
 * Publishes a draft: the paper, the rule versions it closes and opens, the recheck and its bell, all in one
 * transaction. Nothing is judged here; the answer comes at once, with the id of the recheck.
 */
export async function publishBulletin(
  { store, clock }: Ports,
  actor: Actor,
  input: PublishInput,
): Promise<Outcome<{ readonly recheckId: number }>> {
  return store
    .transaction(async (tx) => {
      await tx.rulebook.alone();
      return publishIn(tx, clock, actor, input);
    })
    .catch((error: unknown) => {
      if (error instanceof DraftGoneStale) return refused('bad-input', error.problems.join(' '), { field: 'draft' });
      throw error;
    });
}

/**
 * The same in the caller's transaction, which must hold the rulebook alone. A draft that no longer fits is thrown as
 * {@link DraftGoneStale}, so that the transaction is rolled back.
 */
export async function publishIn(
  tx: Tables,
  clock: Clock,
  actor: Actor,
  { id, version, whatIfRevision }: PublishInput,
): Promise<Outcome<{ readonly recheckId: number }>> {
  const bulletin = await tx.bulletins.lock(id);
  const refusal = notToBePublished(bulletin, version);
  if (refusal) return refusal;
  const before = await loadRulebook(tx, clock);
  if (whatIfRevision !== undefined && whatIfRevision !== before.revision) {
    return refused('conflict', `The rulebook has changed since "what if" was shown; ask it again, then publish.`, {
      field: 'whatIfRevision',
    });
  }
  const { revision, at } = await tx.rulebook.addRevision({ cause: 'publish', sourceId: id, personId: actor.id });
  const changes = applyDraft(before.rulebook, sourceOf(bulletin!), bulletin!.draft ?? { opens: [], ends: [] }, at);
  if (!changes.ok) throw new DraftGoneStale(changes.problems);
  await writeChanges(tx, changes.value, revision, at);
  await tx.bulletins.markPublished(id, at);
  const closed = changes.value.changed.filter((rule) => !changes.value.opens.includes(rule));
  const scope = recheckScopeOf(changesBy(clock.today(), closed, changes.value.opens));
  const recheckId = await startRecheck(tx, { cause: 'publish', sourceId: id, revision, scope, requestedBy: actor.id });
  await notePartsOf(tx, clock, id, { before, at, changes: changes.value });
  await tx.live.tell('bulletin', id);
  return done({ recheckId });
}

/** Which parts the bulletin bars or ends, by the papers of the day on which the last of its rules comes into force. */
async function notePartsOf(
  tx: Tables,
  clock: Clock,
  sourceId: number,
  { before, at, changes }: { before: LoadedRulebook; at: number; changes: DraftChanges },
): Promise<void> {
  const today = clock.today();
  const day = dayOfChanges(today, changes);
  const after = { rulebook: changes.rulebook, now: at };
  await noteParts(tx, sourceId, partsTouched(before, after, { ...changes, day }, before.naming), { day, today });
}

/** Rolls the transaction back: the rulebook has moved on since the draft was saved. */
export class DraftGoneStale extends Error {
  constructor(readonly problems: readonly string[]) {
    super('the draft no longer fits the rulebook');
  }
}

function notToBePublished(bulletin: BulletinRecord | null, version: number): Outcome<never> | null {
  if (!bulletin) return refused('not-found', 'There is no bulletin with this number.');
  if (bulletin.state !== 'draft')
    return refused('already-done', `Bulletin ${bulletin.number} is ${bulletin.state} already.`, { current: bulletin });
  if (bulletin.version !== version)
    return refused('stale', `Bulletin ${bulletin.number} was changed meanwhile.`, { current: bulletin });
  return null;
}

async function writeChanges(tx: Tables, { closes, opens }: DraftChanges, revision: number, at: number): Promise<void> {
  await tx.rulebook.close(closes, at, revision);
  await tx.rulebook.open(
    opens.map((rule: FitRule) => writeFitRule(rule)),
    revision,
  );
}
