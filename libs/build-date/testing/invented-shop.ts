import { day } from '../../day';
import { prepareShop } from '../prepare-shop';
import { PUBLISHED_STANDARD_EDITIONS } from '../published-standard-editions';
import { ShopDataSchema } from '../shop-data';

export const MAKER = 'Harrowgate';
export const TODAY = day('2026-11-25');

const months = 'ABCDEFGHJKLM';

/** Schemes of an invented maker, one or more for every kind of field. Some overlap in time, as makers' schemes do. */
export const shopData = ShopDataSchema.parse({
  standardEditions: PUBLISHED_STANDARD_EDITIONS,
  serialSchemes: [
    {
      id: 'digit-letter',
      maker: MAKER,
      name: 'year digit, month letter',
      validFrom: '1990-01-01',
      validTo: '2015-07-01',
      fields: [
        {
          kind: 'plant',
          length: 1,
          codes: [
            { code: 'K', name: 'Kelso' },
            { code: 'W', name: 'Wick' },
          ],
        },
        { kind: 'year-digit' },
        { kind: 'month-letter', letters: months },
        { kind: 'sequence', length: 5 },
      ],
    },
    {
      id: 'year-week',
      maker: MAKER,
      lines: ['Fell tillers'],
      name: 'two-digit year, week',
      validFrom: '2015-07-01',
      validTo: null,
      fields: [
        { kind: 'literal', text: 'H' },
        { kind: 'year-two-digits' },
        { kind: 'iso-week' },
        { kind: 'separator' },
        { kind: 'sequence', length: 4, maxLength: 6 },
      ],
    },
    {
      id: 'day-of-year',
      maker: MAKER,
      lines: ['Moor chippers'],
      name: 'four-digit year, day of the year',
      validFrom: '2014-01-01',
      validTo: null,
      fields: [{ kind: 'year-four-digits' }, { kind: 'day-of-year' }, { kind: 'sequence', length: 3 }],
    },
    {
      id: 'letter-month-day',
      maker: MAKER,
      name: 'year letter, month and day',
      validFrom: '1988-03-01',
      validTo: '2019-01-01',
      fields: [
        { kind: 'year-letter', letters: 'ABCDEFGHJKLMNPRSTUVWXY', firstYear: 1988 },
        { kind: 'month-number' },
        { kind: 'day-of-month' },
        { kind: 'other', length: 2 },
        { kind: 'sequence', length: 4 },
      ],
    },
    {
      id: 'plain',
      maker: MAKER,
      name: 'plain numbers',
      validFrom: null,
      validTo: '1990-01-01',
      fields: [{ kind: 'sequence', length: 6 }],
    },
  ],
});

export const shop = prepareShop(shopData);
export const schemes = shopData.serialSchemes;
