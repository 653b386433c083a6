import type { ImportSheet, SheetView } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { SheetOutcome } from '../ports/index';
import type { Ports } from '../run';
import { ImportRefused } from './import-refused';
import { heldSheet, tellProgress, working, type OnSheet } from './look-at-sheet';
import { viewSheet } from './view-sheet';
import { weighSheet } from './weigh-sheet';

/**
 * Imports a file that was looked at: all of it or nothing, in one transaction, by the same walk as the dry run. One
 * rejected row keeps everything out unless the person leaves the rejected out. When the shop has changed since the
 * dry run so that something else would happen, nothing happens and the file has to be looked at again.
 */
export async function importSheet(
  ports: Ports,
  actor: Actor,
  { id, version, leaveOutRejected }: ImportSheet & OnSheet,
): Promise<Outcome<SheetView>> {
  const imported = await working(ports, id, async (tx) => {
    const held = await heldSheet(tx.sheets, actor, { id, version });
    if (!held.ok) return held;
    const sheet = held.value;
    const { choice, outcome: seen } = sheet;
    if (sheet.state !== 'looked' || !choice || !seen)
      return refused('conflict', 'Look at what the file would change first.');
    if (seen.rejected > 0 && !leaveOutRejected)
      return refused(
        'conflict',
        `${seen.rejected} rows are rejected, so nothing is imported; mend them, or leave them out.`,
      );
    if (seen.add + seen.change === 0)
      return refused('already-done', 'Everything in the file is in the shop already; there is nothing to import.');
    await tx.rulebook.alone();
    await tx.bulk.keepTrailByBatch();
    const onRows = tellProgress(ports, id, 'importing');
    const outcome = await weighSheet(tx, ports, actor, { sheet, choice, write: true, onRows });
    if (!isAsSeen(seen, outcome)) throw new ImportRefused(CHANGED_MEANWHILE);
    await tx.sheets.conclude(id, 'done', choice, outcome);
    await tx.sheets.dropGoodRows(id);
    await tx.live.tell('sheet', id);
    await tx.live.tell('shop-data', null);
    return done(null);
  }).catch((error: unknown) => {
    if (error instanceof ImportRefused) return refused('conflict', error.message);
    throw error;
  });
  return imported.ok ? viewSheet(ports, actor, id) : imported;
}

const CHANGED_MEANWHILE =
  'The shop has changed since you looked, and the file would do something else now; look at it again.';

function isAsSeen(seen: SheetOutcome, now: SheetOutcome): boolean {
  return seen.add === now.add && seen.change === now.change && seen.same === now.same && seen.rejected === now.rejected;
}
