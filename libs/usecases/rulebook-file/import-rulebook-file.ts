import { readRulebookDocument, type RulebookDocument, type RulebookImported } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import { STANDING, type Tables } from '../ports/index';
import type { Ports } from '../run';
import { startRecheck } from '../publish-bulletin/start-recheck';
import { documentOf } from './export-rulebook-file';
import { compareDocuments, type DocumentChanges } from './compare-documents';

const MOST_SAID = 20;

/**
 * Takes a rulebook file in: what is not on file is added, catalogue entries that differ are changed, and what stands on
 * record (papers, versions of rules, supersessions) is never overwritten: a file that says otherwise there is refused,
 * naming what. All in one transaction, with a recheck of everything when something changed.
 */
export async function importRulebookFile(
  { store }: Ports,
  actor: Actor,
  { file, dryRun }: { readonly file: unknown; readonly dryRun: boolean },
): Promise<Outcome<RulebookImported>> {
  const read = readRulebookDocument(file);
  if (!read.ok) {
    const said = read.problems.slice(0, MOST_SAID).map(({ sentence }) => sentence);
    const more = read.problems.length - said.length;
    return refused('bad-input', [...said, ...(more > 0 ? [`${more} more problems.`] : [])].join(' '), {
      field: 'file',
    });
  }
  return store.transaction(async (tx) => {
    await tx.rulebook.alone();
    const changes = compareDocuments(await documentOf(tx), read.document);
    if (changes.conflicts.length > 0)
      return refused('conflict', changes.conflicts.slice(0, MOST_SAID).join(' '), { field: 'file' });
    const total = Object.values(changes.counts).reduce((sum, { added, changed }) => sum + added + changed, 0);
    const recheckId = dryRun || total === 0 ? null : await write(tx, actor, changes);
    return done({ counts: changes.counts, dryRun, recheckId });
  });
}

async function write(tx: Tables, actor: Actor, { added, document }: DocumentChanges): Promise<number> {
  await tx.bulk.saveMakers(
    document.makers.map(({ code, name, numberRules }) => ({
      code,
      name,
      numberRules: { makerCode: code, ...numberRules },
    })),
  );
  await writeLines(tx, document);
  await tx.bulk.saveParts(
    document.parts.map((part) => {
      const slash = part.key.indexOf('/');
      return { ...part, maker: part.key.slice(0, slash), canonical: part.key.slice(slash + 1) };
    }),
  );
  await tx.bulk.saveShopData(document.serialSchemes, document.standardEditions, actor.id);
  const { revision } = await tx.rulebook.addRevision({ cause: 'import', sourceId: null, personId: actor.id });
  await tx.bulk.addSources(added.sources);
  await tx.rulebook.open(added.rules, revision);
  await tx.bulk.closeEnded(revision);
  await tx.bulk.addSupersessions(added.supersessions);
  if (added.standing) await tx.settings.write(STANDING, added.standing, actor.id);
  await tx.live.tell('bulletin', null);
  await tx.live.tell('shop-data', null);
  // Schemes, editions and spans of production may be among it, so that build days are worked out again too.
  const scope = { everything: false, areas: [], ignoresLookBack: true, recompute: { lines: null, evidence: null } };
  return startRecheck(tx, { cause: 'import', sourceId: null, revision, scope, requestedBy: actor.id });
}

async function writeLines(tx: Tables, { lines }: RulebookDocument): Promise<void> {
  await tx.bulk.saveLines(lines.map(({ positions: _positions, ...line }) => line));
  await tx.bulk.savePositions(
    lines.flatMap(({ code: line, positions }) =>
      positions.map(({ places, ...position }, at) => ({ ...position, line, placeNames: places, sortOrder: at + 1 })),
    ),
  );
}
