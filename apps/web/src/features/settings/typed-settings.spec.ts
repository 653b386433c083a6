import type { ShopSettings } from '../../../../../libs/contracts';
import { changesIn, moved, tied, typedFrom } from './typed-settings';

const NOW: ShopSettings = {
  lookBackMonths: 36,
  standing: {
    'service-bulletin': 60,
    'makers-advice': 50,
    'revised-parts-list': 40,
    'parts-list': 30,
    'owners-manual': 20,
    'shop-finding': 10,
  },
  strengthThreshold: { soonerBelow: 0.85, laterAbove: 1.15 },
  keepShelf: true,
  version: 4,
};
const typed = typedFrom(NOW);

describe('the settings as typed', () => {
  it('are no change as long as they are what they were, whatever the weights behind the order', () => {
    const uneven = { ...NOW, standing: { ...NOW.standing, 'service-bulletin': 900, 'shop-finding': 3 } };
    expect(changesIn(typed, NOW)).toEqual({ ok: true, changes: {}, none: true });
    expect(changesIn(typedFrom(uneven), uneven)).toEqual({ ok: true, changes: {}, none: true });
  });

  it('send only what differs, with a comma or a point in a ratio', () => {
    const read = changesIn({ ...typed, months: ' 48 ', laterAbove: '1,2' }, NOW);
    const strengthThreshold = { soonerBelow: 0.85, laterAbove: 1.2 };
    expect(read).toEqual({ ok: true, changes: { lookBackMonths: 48, strengthThreshold }, none: false });
  });

  it('weigh a kind that is moved up above the one it passes, and leave the rest in order', () => {
    const read = changesIn({ ...typed, ranks: moved(typed.ranks, 3, -1) }, NOW);
    const standing = { ...NOW.standing, 'parts-list': 40, 'revised-parts-list': 30 };
    expect(read).toEqual({ ok: true, changes: { standing }, none: false });
  });

  it('weigh two kinds alike that are tied, and apart again when they are parted', () => {
    const together = tied(typed.ranks, 1, true);
    const read = changesIn({ ...typed, ranks: together }, NOW);
    expect(read).toMatchObject({ changes: { standing: { 'service-bulletin': 50, 'makers-advice': 50 } } });
    expect(changesIn({ ...typed, ranks: tied(together, 1, false) }, NOW)).toMatchObject({ none: true });
    const after = { ...NOW, standing: { ...NOW.standing, 'service-bulletin': 50 } };
    expect(typedFrom(after).ranks).toEqual(together);
  });

  it('move nothing beyond either end, and never tie the first with anything', () => {
    expect(moved(typed.ranks, 0, -1)).toBe(typed.ranks);
    expect(moved(typed.ranks, 5, 1)).toBe(typed.ranks);
    expect(tied(typed.ranks, 0, true)).toEqual(typed.ranks);
    expect(moved(tied(typed.ranks, 1, true), 0, 1)[0]).toEqual({ kind: 'makers-advice', tied: false });
  });

  it.each([
    [{ months: '601' }, 'The months must be a whole number from 0 to 600.'],
    [{ months: '' }, 'The months must be a whole number from 0 to 600.'],
    [{ months: '1.5' }, 'The months must be a whole number from 0 to 600.'],
    [{ soonerBelow: '0' }, 'The lower limit must be a ratio above 0 and at most 1.'],
    [{ soonerBelow: '1.01' }, 'The lower limit must be a ratio above 0 and at most 1.'],
    [{ laterAbove: '0.99' }, 'The upper limit must be a ratio of 1 or more.'],
    [{ laterAbove: 'a little' }, 'The upper limit must be a ratio of 1 or more.'],
  ])('name the field that cannot be kept: %j', (part, problem) => {
    expect(changesIn({ ...typed, ...part }, NOW)).toEqual({ ok: false, problem });
  });
});
