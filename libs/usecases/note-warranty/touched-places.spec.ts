import type { PartRow, PositionRow, TouchedRow } from '../ports/index';
import type { WholeUnit } from '../view-unit/index';
import { touchedPlaces } from './touched-places';

const pin = {
  id: 1,
  code: 'PIN',
  name: 'Auger pin',
  places: 2,
  placeNames: ['left', 'right'],
} as unknown as PositionRow;
const whole = { positionList: [pin], rulings: [] } as unknown as WholeUnit;
const part = { id: 7, key: 'HOLM/70412B', number: '70-412B', name: 'Auger pin, late' } as PartRow;
const left = (ticketId: number, place: number, on: string): TouchedRow => ({
  positionId: 1,
  place,
  partId: 7,
  ticketId,
  ticket: `26-${ticketId}`,
  on,
});

describe('where a unit was worked on', () => {
  it('tells what later tickets left as it was once, by the ticket it was done on', () => {
    const rows = [
      left(30, 2, '2026-05-01'),
      left(30, 1, '2024-02-28'),
      left(20, 1, '2024-02-28'),
      left(10, 1, '2024-02-28'),
    ];
    const told = touchedPlaces(whole, rows, new Map([[7, part]]));
    expect(told.map(({ where, on, ticket }) => [where, on, ticket.id])).toEqual([
      ['Auger pin, right', '2026-05-01', 30],
      ['Auger pin, left', '2024-02-28', 10],
    ]);
  });

  it('tells the same part fitted on two days twice', () => {
    const rows = [left(20, 1, '2025-01-01'), left(10, 1, '2024-01-01')];
    expect(touchedPlaces(whole, rows, new Map([[7, part]]))).toHaveLength(2);
  });
});
