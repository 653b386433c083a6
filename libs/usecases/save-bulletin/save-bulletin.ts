import type { BulletinDraft, SaveBulletin } from '../../contracts';
import type { Rulebook } from '../../fit-rules';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/store';
import { sourceOf } from '../publish-bulletin/source-of';
import { applyDraft, loadRulebook } from '../rulebook';
import type { Ports } from '../run';
import { draftProblems } from './draft-problems';

/** Keeps a new bulletin as a draft. A draft that could not be published is refused, naming every entry that is wrong. */
export async function saveBulletin(
  ports: Ports,
  actor: Actor,
  input: SaveBulletin,
): Promise<Outcome<{ readonly id: number }>> {
  const key = bulletinKey(input);
  const checked = await checkDraft(ports.store, ports, key, input);
  if (!checked.ok) return asRefusal(checked.problems);
  const id = await ports.store.transaction((tx) => tx.bulletins.insert(key, { ...input, draft: checked.draft }));
  if (id === null)
    return refused('conflict', `Bulletin ${input.number} of ${input.publisher} is on file already.`, {
      field: 'number',
    });
  await ports.store.live.tell('bulletin', id);
  return done({ id });
}

/** Replaces the text of a draft. */
export async function changeBulletin(
  ports: Ports,
  actor: Actor,
  { id, version, ...input }: SaveBulletin & { readonly id: number; readonly version: number },
): Promise<Outcome<{ readonly id: number }>> {
  const found = await ports.store.bulletins.find(id);
  const checked = await checkDraft(ports.store, ports, found?.key ?? '', input);
  return ports.store.transaction(async (tx) => {
    const bulletin = await tx.bulletins.lock(id);
    if (!bulletin) return refused('not-found', 'There is no bulletin with this number.');
    if (bulletin.state !== 'draft')
      return refused('already-done', `Bulletin ${bulletin.number} is ${bulletin.state}; only a draft can be changed.`, {
        current: bulletin,
      });
    if (bulletin.version !== version)
      return refused('stale', `Bulletin ${bulletin.number} was changed meanwhile.`, { current: bulletin });
    if (!checked.ok) return asRefusal(checked.problems);
    await tx.bulletins.update(id, { ...input, draft: checked.draft });
    await tx.live.tell('bulletin', id);
    return done({ id });
  });
}

/** Publisher and number in letters, digits and dashes: the same paper gets the same key. */
export function bulletinKey({ publisher, number }: Pick<SaveBulletin, 'publisher' | 'number'>): string {
  const plain = (text: string) =>
    text
      .toUpperCase()
      .replace(/[^A-Z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
  return `${plain(publisher)}-${plain(number)}`.slice(0, 80);
}

/** A draft with each rule as it would be published, or what is wrong with it: `opens[3]: ...`, a sentence each. */
export type CheckedDraft =
  { readonly ok: true; readonly draft: BulletinDraft } | { readonly ok: false; readonly problems: readonly string[] };

/** What drafts are checked against: the rulebook as it stands, and the places of every line. */
export interface DraftGround {
  readonly rulebook: Rulebook;
  readonly now: number;
  readonly places: ReadonlyMap<string, ReadonlySet<string>>;
}

export async function draftGround(tables: Tables, { clock }: Pick<Ports, 'clock'>): Promise<DraftGround> {
  const { rulebook, now } = await loadRulebook(tables, clock);
  return { rulebook, now, places: await tables.bulletins.knownPlaces() };
}

/** Checks a draft against the rulebook as it stands. */
export async function checkDraft(
  tables: Tables,
  ports: Pick<Ports, 'clock'>,
  key: string,
  input: SaveBulletin,
): Promise<CheckedDraft> {
  return checkDraftOn(await draftGround(tables, ports), key, input);
}

/** The same on ground that is known already. */
export function checkDraftOn({ rulebook, now, places }: DraftGround, key: string, input: SaveBulletin): CheckedDraft {
  const opens = input.draft.opens.map((rule) => ({
    models: [],
    options: [],
    serials: null,
    allowed: [],
    barred: [],
    replaces: [],
    required: null,
    built: { from: null, to: null },
    inForce: { from: input.effective ?? input.issued, to: null },
    action: 'nothing',
    ...rule,
    version: 1,
    source: key,
    known: { from: null, to: null },
  }));
  const draft = { ...input.draft, opens };
  const applied = applyDraft(rulebook, sourceOf({ ...input, key }), draft, now + 1);
  const problems = applied.ok ? draftProblems(draft, places) : applied.problems;
  return problems.length === 0 ? { ok: true, draft } : { ok: false, problems };
}

const asRefusal = (problems: readonly string[]) =>
  refused('bad-input', problems.slice(0, 20).join(' '), { field: 'draft' });
