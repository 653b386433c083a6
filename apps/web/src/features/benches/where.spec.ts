import { assert, property, uniqueArray, nat } from 'fast-check';
import type { BenchLists, BenchTicket } from '../../../../../libs/contracts';
import { beforeWhenDown, beforeWhenUp, benchOf, nextOf, sayPlace } from './where';

const ticket = (id: number) => ({ id, number: `26-${id}` }) as BenchTicket;
const load = { dayMinutes: 420, openMinutes: 0, onHoldMinutes: 0, unestimated: 0 };

/** What the server does with `before`: the ticket is taken out and put in front of that one, or at the end. */
function put(order: readonly number[], id: number, before: number | null): number[] {
  const rest = order.filter((one) => one !== id);
  const at = before === null ? rest.length : rest.indexOf(before);
  return [...rest.slice(0, at), id, ...rest.slice(at)];
}

describe('a step on a bench', () => {
  const orders = uniqueArray(nat(99), { minLength: 1, maxLength: 8 });

  it('up changes places with the one above, down with the one below, and not at the ends', () => {
    assert(
      property(orders, nat(7), (order, pick) => {
        const at = pick % order.length;
        const id = order[at]!;
        const column = { tickets: order.map(ticket) };
        const swapped = (a: number, b: number) => order.map((one, i) => order[i === a ? b : i === b ? a : i]!);
        const up = beforeWhenUp(column, id);
        const down = beforeWhenDown(column, id);
        expect(up === undefined ? 'first' : put(order, id, up)).toEqual(at === 0 ? 'first' : swapped(at, at - 1));
        const last = at === order.length - 1;
        expect(down === undefined ? 'last' : put(order, id, down)).toEqual(last ? 'last' : swapped(at, at + 1));
        expect(nextOf(column, id)).toBe(order[at + 1] ?? null);
      }),
    );
  });

  it('is told in words, with the bench the ticket is on', () => {
    const lists: BenchLists = {
      today: '2026-11-20',
      benches: [
        { id: 1, code: 'M1', name: 'Snow', location: 'Main', version: 1, load, tickets: [ticket(7), ticket(8)] },
      ],
      unplaced: [ticket(9)],
    };
    expect(sayPlace(lists, 8)).toBe('26-8 is number 2 of 2 on bench M1.');
    expect(sayPlace(lists, 9)).toBe('26-9 is on no bench.');
    expect(sayPlace(lists, 5)).toBe('');
    expect([benchOf(lists, 8), benchOf(lists, 9)]).toEqual([1, null]);
  });
});
