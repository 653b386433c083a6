import type { IntakeDraft, OwnIntakeDraft } from '../../contracts';
import type { Ports } from '../run';

/** A day at the counter. Who comes back to it tomorrow begins anew. */
const KEPT_MS = 12 * 3_600_000;

/** What the person has begun to type at the intake; null when nothing, or when it is older than half a day. */
export async function ownDraft({ store, clock }: Ports, personId: number): Promise<OwnIntakeDraft> {
  return { draft: await store.intakeDrafts.of(personId, clock.now() - KEPT_MS) };
}

/** Keeps what the person has typed so far, in place of what was kept; null forgets it. Old ones of everybody go. */
export async function keepDraft({ store, clock }: Ports, personId: number, draft: IntakeDraft | null): Promise<void> {
  await store.intakeDrafts.forgetBefore(clock.now() - KEPT_MS);
  if (draft === null) await store.intakeDrafts.forget(personId);
  else await store.intakeDrafts.keep(personId, draft, clock.now());
}
