import { describe, expect, it } from '@jest/globals';
import type { FlagView } from '../../../../../libs/contracts';
import { groupFlags } from './group-flags';

const flag = (id: number, change: Partial<FlagView>): FlagView => ({
  id,
  ticket: { id, number: `T-${id}`, stage: 'repair', bench: null },
  unit: 'Tiller',
  owner: 'An owner',
  position: 'OUTER-PIN',
  positionName: 'Outer pin',
  placeName: 'left',
  verdict: 'wrong',
  severity: 1,
  part: { key: 'ORB/1', number: '1', name: 'pin' },
  required: { key: 'ORB/2', number: '2', name: 'pin' },
  sentence: '',
  source: 'SB 1',
  strength: null,
  state: 'open',
  openedAt: '2026-01-01T00:00:00.000Z',
  decision: null,
  version: 1,
  ...change,
});

describe('flags on the manager’s desk', () => {
  it('puts equals into one group and names what they share', () => {
    const groups = groupFlags([flag(1, {}), flag(2, {}), flag(3, { positionName: 'Inner pin' })]);
    expect(groups.map(({ flags, title }) => [title, flags.map(({ id }) => id)])).toEqual([
      ['Outer pin: 1 fitted, 2 required', [1, 2]],
      ['Inner pin: 1 fitted, 2 required', [3]],
    ]);
  });

  it('shows the group with the worst flag first, whatever its size', () => {
    const groups = groupFlags([flag(1, {}), flag(2, {}), flag(3, { source: 'SB 2', severity: 9 })]);
    expect(groups.map(({ flags }) => flags.length)).toEqual([1, 2]);
  });

  it('keeps parts apart that could not be told', () => {
    const [group] = groupFlags([flag(1, { part: null, required: null })]);
    expect(group?.title).toBe('Outer pin: a part that could not be told');
  });
});
