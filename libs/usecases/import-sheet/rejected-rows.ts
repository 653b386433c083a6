import { csvLine, kindOf, reportedCell, withGuard } from '../../sheets';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { problemsOf } from './view-sheet';

const AT_ONCE = 2_000;
/** Column that says where the row stood, and the one that says why it was rejected. */
const [ROW, WHY] = ['Row in the file', 'Why it was rejected'];

/**
 * Every rejected row as it stood in the file, with its number there and why, as CSV piece by piece. Brought in again
 * unmended it is rejected again. When it is itself such a list, its last two columns are written anew.
 */
export async function rejectedRows(
  { store }: Ports,
  actor: Actor,
  id: number,
): Promise<Outcome<{ fileName: string; lines: AsyncIterable<string> }>> {
  const sheet = await store.sheets.find(id, actor.id);
  if (!sheet?.outcome) return refused('not-found', 'There is no such file, or nobody has looked at it yet.');
  const { mapping = {}, dayOrder = null } = sheet.choice ?? {};
  const kind = kindOf(sheet.kind);
  const kept = [...sheet.headings.keys()].filter((at) => ![ROW, WHY].includes(sheet.headings[at]!));
  async function* lines(): AsyncGenerator<string> {
    yield `\uFEFF${csvLine([...kept.map((at) => withGuard(sheet!.headings[at]!)), ROW, WHY])}\r\n`;
    for (let after = 0; ;) {
      const rows = await store.sheets.rejected(id, after, AT_ONCE);
      if (rows.length === 0) return;
      yield rows
        .map((row) => {
          const columnOf = new Map(
            row.problems.flatMap(({ field }) => (field === null ? [] : [[mapping[field], kind.columns[field]]])),
          );
          const cells = kept.map((at) => reportedCell(row.cells[at] ?? null, columnOf.get(at), { dayOrder }));
          const why = problemsOf(row, sheet!, mapping).map(({ heading, says }) =>
            heading ? `${heading}: ${says}` : says,
          );
          return `${csvLine([...cells, String(row.n), withGuard(why.join(' '))])}\r\n`;
        })
        .join('');
      after = rows[rows.length - 1]!.n;
    }
  }
  return done({ fileName: `rejected-${sheet.kind}.csv`, lines: lines() });
}
