import type { CellProblemView, SheetView } from '../../contracts';
import { kindOf, proposeMapping, textOfCell, type CellProblem, type Mapping } from '../../sheets';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { RejectedRow, SheetRecord } from '../ports/index';
import type { Ports } from '../run';
import { rememberedMapping } from './remembered-mapping';

const MOST_SHOWN = 200;
const SAMPLE_ROWS = 5;
const LONGEST_SHOWN = 200;

/** A file that was brought, as the person who brought it sees it. */
export async function viewSheet({ store }: Ports, actor: Actor, id: number): Promise<Outcome<SheetView>> {
  const sheet = await store.sheets.find(id, actor.id);
  if (!sheet)
    return refused('not-found', 'There is no such file; files are kept for a day and only for who brought them.');
  const remembered = sheet.choice ? {} : await rememberedMapping(store, sheet.kind);
  const mapping = sheet.choice?.mapping ?? proposeMapping(kindOf(sheet.kind), sheet.headings, remembered);
  const rejected = sheet.outcome ? await store.sheets.rejected(id, 0, MOST_SHOWN) : [];
  const sample = await store.sheets.firstRows(id, SAMPLE_ROWS);
  const {
    version,
    kind,
    fileName,
    state,
    format,
    encoding,
    encodingCertain,
    delimiter,
    headings,
    rows,
    doing,
    progress,
    outcome,
  } = sheet;
  return done({
    id,
    version,
    kind,
    fileName,
    state,
    format,
    encoding,
    encodingCertain,
    delimiter,
    headings: [...headings],
    rows,
    doing,
    progress,
    outcome: outcome && { ...outcome },
    mapping: { ...mapping },
    dayOrder: sheet.choice ? sheet.choice.dayOrder : sheet.dayOrder,
    publish: sheet.choice?.publish ?? false,
    sample: sample.map(({ cells }) => headings.map((_, at) => textOfCell(cells[at] ?? null).slice(0, LONGEST_SHOWN))),
    rejected: rejected.map((row) => ({ row: row.n, problems: problemsOf(row, sheet, mapping) })),
  });
}

/** The problems of a rejected row with the columns they stand in. */
export function problemsOf(
  { cells, problems }: RejectedRow,
  { headings }: Pick<SheetRecord, 'headings'>,
  mapping: Mapping,
): CellProblemView[] {
  return problems.map(({ field, code, says }: CellProblem) => {
    const at = field === null ? null : (mapping[field] ?? null);
    const value = at === null ? '' : textOfCell(cells[at] ?? null).slice(0, LONGEST_SHOWN);
    return {
      field,
      code,
      says,
      heading: at === null ? null : (headings[at] ?? ''),
      column: at === null ? null : columnLetters(at),
      value,
    };
  });
}

/** As a spreadsheet names the column: 0 is A, 26 is AA. */
export function columnLetters(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26));
  return at < 26 ? letter : columnLetters(Math.floor(at / 26) - 1) + letter;
}
