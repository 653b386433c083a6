import type { Actor } from '../actor';
import type { SheetChoice, SheetOutcome, SheetRecord, Tables } from '../ports/index';
import type { Ports } from '../run';
import { KIND_WORK } from './all-kinds';

export interface Weighing {
  readonly sheet: SheetRecord;
  readonly choice: SheetChoice;
  /** True writes what was weighed; false is a dry run. */
  readonly write: boolean;
  readonly onRows: (rows: number) => Promise<void>;
}

/**
 * Weighs every row that could be read against what the shop holds, group by group, and writes when it is asked to.
 * The dry run and the import are this same walk.
 */
export async function weighSheet(
  tx: Tables,
  { clock }: Ports,
  actor: Actor,
  { sheet, choice, write, onRows }: Weighing,
): Promise<SheetOutcome> {
  const run = await KIND_WORK[sheet.kind]({ tx, actor, clock, publish: choice.publish });
  const counts = { add: 0, change: 0, same: 0 };
  let seen = 0;
  await tx.sheets.forgetProblems(sheet.id);
  for await (const rows of tx.sheets.groups(sheet.id)) {
    const weighed = await run.weigh(rows);
    for (const { outcome } of weighed) if (outcome) counts[outcome]++;
    if (write) await run.write();
    await tx.sheets.keepProblems(sheet.id, weighed);
    seen += rows.length;
    await onRows(seen);
  }
  const recheckId = write && counts.add + counts.change > 0 ? await run.finish() : null;
  return { ...counts, rejected: sheet.rows - counts.add - counts.change - counts.same, recheckId };
}
