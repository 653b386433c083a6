import { groupBy } from '../../group-by';
import { formatDay } from '../../../day';
import { sightOf } from '../../actor';
import type { CellProblem, TicketSheetRow } from '../../../sheets';
import type { BulkTicket, BulkUnit, NewBulkTicket, ReadSheetRow, WeighedRow } from '../../ports/index';
import { added, problem, rejected, same, type KindContext, type KindRun, type OpenKind } from '../kind-work';
import { recheckOf, scopeOfLines } from '../new-revision';
import { unitFinder, type FoundUnit, type NamedUnit } from './find-unit';
import { TicketParts } from './ticket-parts';
import { recordOf, recordProblem, recordsOnFile } from './ticket-records';

interface Row {
  readonly n: number;
  readonly row: TicketSheetRow;
}

/** Past tickets with the parts recorded on them. A ticket goes in whole or not at all, and is never changed. */
export const openTickets: OpenKind = async (context): Promise<KindRun> => {
  const run = new TicketsRun(context);
  await run.open();
  return run;
};

class TicketsRun implements KindRun {
  private places = new Map<string, ReadonlyMap<string, number>>();
  private parts!: TicketParts;
  private readonly touched = new Set<string>();
  private writes: (NewBulkTicket & { readonly line: string })[] = [];

  constructor(private readonly context: KindContext) {}

  async open(): Promise<void> {
    const { tx } = this.context;
    const byLine = groupBy(await tx.bulk.positions(), ({ line }) => line);
    for (const [line, all] of byLine)
      this.places.set(line, new Map(all.map((one) => [one.code, one.placeNames.length])));
    this.parts = await TicketParts.of(tx);
  }

  async weigh(rows: readonly ReadSheetRow[]): Promise<readonly WeighedRow[]> {
    const { tx, actor } = this.context;
    this.writes = [];
    const all = rows.map(({ n, values }) => ({ n, row: values as unknown as TicketSheetRow }));
    const find = await unitFinder(
      tx,
      all.map(({ row }) => row),
      sightOf(actor),
    );
    await this.parts.load(all.flatMap(({ row }) => [row.part, ...(row.canBe ?? [])]));
    const groups = groupBy(all, ({ row }) => row.number);
    const onFile = new Map(
      (await tx.bulk.ticketsByNumbers([...groups.keys()])).map((ticket) => [ticket.number, ticket]),
    );
    return [...groups].flatMap(([number, group]) => this.weighTicket(group, onFile.get(number), find));
  }

  private weighTicket(
    group: readonly Row[],
    before: BulkTicket | undefined,
    find: (row: NamedUnit) => FoundUnit,
  ): WeighedRow[] {
    const [first] = group as readonly [Row, ...Row[]];
    const head = this.headProblem(group, before);
    const found = find(first.row);
    const unit = found.ok ? found.unit : null;
    const wrong = head ?? (found.ok ? unitProblem(first.row, unit) : { n: null, problem: found.problem });
    if (wrong) return withTheOthers(group, new Map([[wrong.n ?? first.n, [wrong.problem]]]));
    const problems = this.recordProblems(group, unit!);
    if (problems.size > 0) return withTheOthers(group, problems);
    const ticket = this.ticketOf(group, unit!);
    if (before) {
      const otherwise = recordsOnFile(before, ticket, group);
      return otherwise ? withTheOthers(group, otherwise) : group.map(({ n }) => same(n));
    }
    this.writes.push({ ...ticket, line: unit!.line! });
    return group.map(({ n }) => added(n));
  }

  private headProblem(
    group: readonly Row[],
    before: BulkTicket | undefined,
  ): { n: number; problem: CellProblem } | null {
    const [first] = group as readonly [Row, ...Row[]];
    const today = formatDay(this.context.clock.today());
    for (const { n, row } of group) {
      if (row.closed > today)
        return {
          n,
          problem: problem(
            'closed',
            'not-accepted',
            `${row.closed} is after today; only tickets that are closed come in.`,
          ),
        };
      for (const field of HEAD)
        if ((row[field] ?? null) !== (first.row[field] ?? null))
          return {
            n,
            problem: problem(
              field,
              'conflict',
              `Row ${first.n} of ticket ${row.number} says "${String(first.row[field] ?? '')}"; make them agree.`,
            ),
          };
    }
    if (before && !before.isClosed)
      return {
        n: first.n,
        problem: problem(
          'number',
          'conflict',
          `Ticket ${before.number} is in the shop now; it is not changed by a spreadsheet.`,
        ),
      };
    return null;
  }

  private recordProblems(group: readonly Row[], unit: BulkUnit): Map<number, CellProblem[]> {
    const problems = new Map<number, CellProblem[]>();
    const places = this.places.get(unit.line!) ?? new Map<string, number>();
    const seen = new Map<string, number>();
    for (const { n, row } of group) {
      if (!row.position) continue;
      const found = recordProblem(row, unit.line!, places, this.parts);
      const name = JSON.stringify([row.position, row.place ?? 1, row.side ?? 'left']);
      const twice = seen.get(name);
      if (found) problems.set(n, [found]);
      else if (twice !== undefined)
        problems.set(n, [problem('position', 'twice', `Row ${twice} records this place already; keep one.`)]);
      else seen.set(name, n);
    }
    return problems;
  }

  private ticketOf(group: readonly Row[], unit: BulkUnit): NewBulkTicket {
    const [{ row }] = group as readonly [Row, ...Row[]];
    return {
      number: row.number,
      unitId: unit.id,
      opened: row.opened,
      closed: row.closed,
      complaint: row.complaint ?? '',
      cancelled: row.cancelled ?? null,
      records: group.flatMap((one) => (one.row.position ? [recordOf(one.row, unit.line!, this.parts)] : [])),
    };
  }

  async write(): Promise<void> {
    const { tx, actor } = this.context;
    await tx.bulk.addUnlisted(this.parts.takeNew());
    await tx.bulk.insertTickets(this.writes, actor.id);
    for (const { line } of this.writes) this.touched.add(line);
  }

  finish(): Promise<number | null> {
    const { tx, actor } = this.context;
    return recheckOf(tx, actor, scopeOfLines(this.touched));
  }
}

const HEAD = ['opened', 'closed', 'unitNumber', 'line', 'serial', 'complaint', 'cancelled'] as const;

function unitProblem(row: TicketSheetRow, unit: BulkUnit | null): { n: null; problem: CellProblem } | null {
  if (!unit)
    return {
      n: null,
      problem: problem(
        'serial',
        'not-on-file',
        `There is no ${row.line ?? 'unit'} with serial ${row.serial ?? ''} on file; bring owners and units in first.`,
      ),
    };
  if (unit.line) return null;
  return {
    n: null,
    problem: problem(
      'line',
      'conflict',
      'Nobody has said what this unit is, so it has no positions; identify it first.',
    ),
  };
}

/** A ticket goes in whole: where one of its rows is rejected, so are the others, and say which it was. */
function withTheOthers(group: readonly Row[], problems: ReadonlyMap<number, readonly CellProblem[]>): WeighedRow[] {
  const [first] = [...problems.keys()];
  return group.map(({ n, row }) => {
    const own = problems.get(n);
    return rejected(
      n,
      ...(own ?? [problem(null, 'conflict', `Ticket ${row.number} goes in whole, and its row ${first} is rejected.`)]),
    );
  });
}
