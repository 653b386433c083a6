import type { CellProblem, TicketSheetRow } from '../../../sheets';
import type { BulkRecord, BulkTicket, NewBulkTicket } from '../../ports/index';
import { alike, problem } from '../kind-work';
import type { TicketParts } from './ticket-parts';

/** What is wrong with what a row records, against the line's positions and the makers' numbers. */
export function recordProblem(
  row: TicketSheetRow,
  line: string,
  places: ReadonlyMap<string, number>,
  parts: TicketParts,
): CellProblem | null {
  const count = places.get(row.position!);
  if (count === undefined)
    return problem(
      'position',
      'not-on-file',
      `Line ${line} has no position "${row.position}"; it has ${[...places.keys()].slice(0, 12).join(', ') || 'none'}.`,
    );
  if ((row.place ?? 1) > count)
    return problem(
      'place',
      'not-on-file',
      `Position ${row.position} has ${count} ${count === 1 ? 'place' : 'places'}, not ${row.place}.`,
    );
  for (const [field, text] of [
    ['part', row.part] as const,
    ...(row.canBe ?? []).map((one) => ['canBe', one] as const),
  ]) {
    if (!text) continue;
    const chosen = parts.read(text, line);
    if (!chosen.ok) return problem(field, 'not-accepted', chosen.sentence);
    const eaten = parts.zerosEaten(chosen.part);
    if (eaten)
      return problem(
        field,
        'leading-zeros',
        `"${text}" is not on file, but ${eaten.number} is; if a spreadsheet ate its zeros, enter it anew as text.`,
      );
  }
  return null;
}

/** What a good row records. */
export function recordOf(row: TicketSheetRow, line: string, parts: TicketParts): BulkRecord {
  const side = row.side ?? 'left';
  const part = row.part ? parts.use(row.part, line) : null;
  return {
    position: row.position!,
    place: row.place ?? 1,
    side,
    part: part?.key ?? null,
    partText: row.part ?? null,
    pack: part && part.pack > 1 ? part.pack : null,
    candidates: [...new Set((row.canBe ?? []).map((one) => parts.use(one, line).key))].sort(),
    told: row.told ?? null,
    condition: row.condition ?? null,
    fittedOn: row.fittedOn === undefined ? (side === 'left' && part ? row.closed : null) : row.fittedOn,
    leftOut: row.leftOut ?? null,
  };
}

/** Null when all that the rows say of a ticket stands on it already; else what does not, by row. */
export function recordsOnFile(
  before: BulkTicket,
  ticket: NewBulkTicket,
  group: readonly { readonly n: number; readonly row: TicketSheetRow }[],
): ReadonlyMap<number, readonly CellProblem[]> | null {
  const says = (what: string) =>
    `Ticket ${ticket.number} is on file and says otherwise (${what}); a closed ticket is not changed by a spreadsheet.`;
  const head = (['unitId', 'opened', 'closed'] as const).find((field) => before[field] !== ticket[field]);
  if (head)
    return new Map([
      [group[0]!.n, [problem(head === 'unitId' ? 'serial' : head, 'conflict', says(`${String(before[head])}`))]],
    ]);
  const problems = new Map<number, readonly CellProblem[]>();
  let at = 0;
  for (const { n, row } of group) {
    if (!row.position) continue;
    const record = ticket.records[at++]!;
    const kept = before.records.find(
      (one) => one.position === record.position && one.place === record.place && one.side === record.side,
    );
    if (!kept) problems.set(n, [problem('position', 'conflict', says('nothing is recorded there'))]);
    else if (!alike(shownOf(kept, row), shownOf(record, row)))
      problems.set(n, [problem('part', 'conflict', says(kept.partText ?? kept.condition ?? 'no part'))]);
  }
  return problems.size > 0 ? problems : null;
}

/** Only what the file has columns for is compared; how a number was typed does not matter, which part it is does. */
function shownOf(record: BulkRecord, row: TicketSheetRow) {
  const { part, candidates, condition, fittedOn, leftOut, told } = record;
  return {
    part: row.part === undefined ? null : part,
    candidates: row.canBe === undefined ? null : candidates,
    condition: row.condition === undefined ? null : condition,
    fittedOn: row.fittedOn === undefined ? null : fittedOn,
    leftOut: row.leftOut === undefined ? null : leftOut,
    told: row.told === undefined ? null : told,
  };
}
