import type { BenchList, BenchLists } from '../../../../../libs/contracts';

/** The column of what is on no bench: a list without order. */
export const NO_BENCH = { id: null, code: '', name: 'No bench yet', load: null } as const;

/** A column of the page: a bench, or what is on none. */
export type Column = Pick<BenchList, 'tickets' | 'code' | 'name'> &
  ({ id: number; version: number; load: BenchList['load'] } | { id: null; load: null });

/** The ticket that stands after the given one; null when it is the last. */
export function nextOf({ tickets }: Pick<Column, 'tickets'>, id: number): number | null {
  return tickets[tickets.findIndex((one) => one.id === id) + 1]?.id ?? null;
}

/** Before which ticket one comes to stand when it goes up by one place; undefined for the first. */
export function beforeWhenUp({ tickets }: Pick<Column, 'tickets'>, id: number): number | undefined {
  return tickets[tickets.findIndex((one) => one.id === id) - 1]?.id;
}

/** Before which ticket one comes to stand when it goes down by one place: null is the end; undefined for the last. */
export function beforeWhenDown(column: Pick<Column, 'tickets'>, id: number): number | null | undefined {
  const next = nextOf(column, id);
  return next === null ? undefined : nextOf(column, next);
}

/** On which bench a ticket is; null is none. */
export function benchOf({ benches }: BenchLists, id: number): number | null {
  return benches.find(({ tickets }) => tickets.some((one) => one.id === id))?.id ?? null;
}

/** Where a ticket stands now, for those who cannot see it move. */
export function sayPlace({ benches, unplaced }: BenchLists, id: number): string {
  for (const { code, tickets } of benches) {
    const at = tickets.findIndex((one) => one.id === id);
    if (at >= 0) return `${tickets[at]!.number} is number ${at + 1} of ${tickets.length} on bench ${code}.`;
  }
  const ticket = unplaced.find((one) => one.id === id);
  return ticket ? `${ticket.number} is on no bench.` : '';
}
