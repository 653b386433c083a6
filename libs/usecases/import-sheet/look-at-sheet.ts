import type { LookAtSheet, SheetView } from '../../contracts';
import { headingsOf, kindOf, mappingProblems } from '../../sheets';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { SheetChoice, SheetRecord, Tables } from '../ports/index';
import type { Ports } from '../run';
import { mappingKey } from './remembered-mapping';
import { viewSheet } from './view-sheet';
import { weighSheet } from './weigh-sheet';
import { readSheetRows } from './read-sheet-rows';

/** A file and the version a person has before their eyes. */
export interface OnSheet {
  readonly id: number;
  readonly version: number;
}

/**
 * The dry run: reads the file by the chosen columns and says what an import would do and what is wrong, by row and
 * column. The choice of columns is remembered for the next file of the kind. Nothing of the shop changes.
 */
export async function lookAtSheet(
  ports: Ports,
  actor: Actor,
  { id, version, ...asked }: LookAtSheet & OnSheet,
): Promise<Outcome<SheetView>> {
  const looked = await working(ports, id, async (tx) => {
    const held = await heldSheet(tx.sheets, actor, { id, version });
    if (!held.ok) return held;
    const sheet = held.value;
    const problems = mappingProblems(kindOf(sheet.kind), asked.mapping, sheet.headings.length);
    if (problems.length > 0) return refused('bad-input', problems.join(' '), { field: 'mapping' });
    const choice: SheetChoice = { mapping: asked.mapping, dayOrder: asked.dayOrder, publish: asked.publish };
    await readSheetRows(tx, sheet, choice, tellProgress(ports, id, 'reading the rows'));
    const onRows = tellProgress(ports, id, 'comparing with the shop');
    const outcome = await weighSheet(tx, ports, actor, { sheet, choice, write: false, onRows });
    await tx.sheets.conclude(id, 'looked', choice, outcome);
    await tx.settings.write(mappingKey(sheet.kind), headingsOf(choice.mapping, sheet.headings), actor.id);
    await tx.live.tell('sheet', id);
    return done(null);
  });
  return looked.ok ? viewSheet(ports, actor, id) : looked;
}

/** The person's file, held for this transaction; refused when it is gone, changed, imported or being worked on. */
export async function heldSheet(
  sheets: Ports['store']['sheets'],
  actor: Actor,
  { id, version }: OnSheet,
): Promise<Outcome<SheetRecord>> {
  const found = await sheets.find(id, actor.id);
  if (!found)
    return refused('not-found', 'There is no such file; files are kept for a day and only for who brought them.');
  if (!(await sheets.hold(id))) return refused('conflict', 'The file is being worked on; wait until that is done.');
  const sheet = (await sheets.find(id, actor.id))!;
  if (sheet.state === 'done')
    return refused('already-done', 'The file is imported already; bring it once more to import it again.');
  if (sheet.state === 'reading') return refused('conflict', 'The file is still being taken in.');
  if (sheet.version !== version)
    return refused('stale', 'The file was looked at otherwise meanwhile.', { current: { version: sheet.version } });
  return done(sheet);
}

/** Tells open pages how far the work is, at most a few times a second and outside the work's transaction. */
export function tellProgress({ store, clock }: Ports, id: number, doing: string): (rows: number) => Promise<void> {
  let last = 0;
  return async (rows) => {
    const now = clock.now();
    if (now - last < TELL_EVERY_MS && last !== 0) return;
    last = now;
    await store.sheets.progress(id, doing, rows);
    await store.live.tell('sheet', id);
  };
}

/** Long work on a file in one transaction. Where it breaks off, nothing is said to be done with the file any more. */
export async function working<T>({ store }: Ports, id: number, work: (tx: Tables) => Promise<T>): Promise<T> {
  try {
    return await store.transaction(work, LONG);
  } catch (error) {
    await store.sheets.progress(id, null, 0);
    throw error;
  }
}

const TELL_EVERY_MS = 300;
/** A million rows take their time. */
const LONG = { minutes: 60 };
