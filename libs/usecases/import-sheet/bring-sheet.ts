import { ColumnsSeen, headingKey, type Cell, type SheetKind } from '../../sheets';
import type { SheetView } from '../../contracts';
import type { Actor } from '../actor';
import { refused, type Outcome } from '../outcome';
import type { SheetFile } from '../ports/index';
import type { Ports } from '../run';
import { viewSheet } from './view-sheet';

/** A file as its reader hands it out; what breaks in mid-file is thrown by the iteration. */
export interface SheetSource extends Pick<
  SheetFile,
  'format' | 'encoding' | 'encodingCertain' | 'delimiter' | 'headings'
> {
  readonly rows: AsyncIterable<readonly { readonly n: number; readonly cells: readonly Cell[] }[]>;
}

/** Rows that go over in one statement. */
const AT_ONCE = 2_000;

/**
 * Takes a file in as it stands, row by row, so that it can be looked at; nothing of the shop changes. When it breaks
 * in the middle, nothing of it stays.
 */
export async function bringSheet(
  ports: Ports,
  actor: Actor,
  { kind, fileName, source }: { kind: SheetKind; fileName: string; source: SheetSource },
): Promise<Outcome<SheetView>> {
  const wrong = headingProblem(source.headings);
  if (wrong) return refused('bad-input', wrong, { field: 'file' });
  const { sheets, live } = ports.store;
  const id = await sheets.insert({ personId: actor.id, kind, fileName });
  try {
    const seen = new ColumnsSeen();
    let rows = 0;
    for await (const batch of inBatches(source.rows)) {
      for (const { cells } of batch) seen.add(cells);
      await sheets.addRows(id, batch);
      rows += batch.length;
      await sheets.progress(id, 'reading the file', rows);
      await live.tell('sheet', id);
    }
    if (rows === 0) {
      await sheets.remove(id);
      return refused('bad-input', 'The file has a heading and no rows.', { field: 'file' });
    }
    const { format, encoding, encodingCertain, delimiter, headings } = source;
    const looks = seen.looks(headings.length);
    const dayOrder = seen.dayOrder();
    await sheets.taken(id, { format, encoding, encodingCertain, delimiter, headings, looks, dayOrder, rows });
  } catch (error) {
    await sheets.remove(id);
    throw error;
  }
  return viewSheet(ports, actor, id);
}

function headingProblem(headings: readonly string[]): string | null {
  const keys = headings.map(headingKey);
  const twice = keys.findIndex((key, at) => key !== '' && keys.indexOf(key) !== at);
  return twice === -1 ? null : `Column "${headings[twice]}" stands in the heading twice; name each column once.`;
}

async function* inBatches(rows: SheetSource['rows']): AsyncGenerator<{ n: number; cells: readonly Cell[] }[]> {
  let held: { n: number; cells: readonly Cell[] }[] = [];
  for await (const batch of rows) {
    for (const row of batch) {
      held.push(row);
      if (held.length < AT_ONCE) continue;
      yield held;
      held = [];
    }
  }
  if (held.length > 0) yield held;
}
