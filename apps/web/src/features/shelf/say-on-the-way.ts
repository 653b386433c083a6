import type { ShelfItemDetail } from '../../../../../libs/contracts';
import { sayDayText } from '../../lib/say';

type Ordered = Pick<ShelfItemDetail['orders'][number], 'pieces' | 'received' | 'supplier' | 'expectedOn'>;

/** What is still to come of an order, from whom, and when. */
export function sayOnTheWay({ pieces, received, supplier, expectedOn }: Ordered): string {
  const from = supplier === '' ? '' : ` from ${supplier}`;
  return `${pieces - received} of ${pieces}${from}${expectedOn ? `, expected ${sayDayText(expectedOn)}` : ''}`;
}
