import { column, kind, mustHave, type RowOf } from '../column';
import { readTradeNumber, writeTradeNumber } from '../../part-number';
import { bad, good, shown } from '../cell';
import { listOf, nameOf, numberIn, oneOf, words, type Reader } from '../readers';
import { fastenerColumns } from './fastener-columns';
import { makerCode } from './makers';

/** The most a price can be, in whole units of money. */
const MOST_MONEY = 1_000_000;

export const partNumber = nameOf(60);

const makerColumn = mustHave('Maker', makerCode, {
  also: ['maker code', 'manufacturer', 'manufacturer code', 'brand', 'supplier', 'mfr', 'hersteller'],
  says: "The maker's code, as under makers.",
  example: 'HOLM',
});

/** A number in a bag's bar code, fourteen digits, and the pieces in that bag. */
export interface TradeNumberCell {
  readonly gtin: string;
  readonly pack: number;
}

const digitsAndPack = nameOf(40);
/** The most pieces a bag may hold. */
const MOST_IN_BAG = 10_000;

/** A trade number, and after an x how many are in the bag: `6291041500213 x10`. */
const tradeNumber: Reader<TradeNumberCell> = (cell, how) => {
  const text = digitsAndPack(typeof cell === 'number' ? String(cell) : cell, how);
  if (!text.ok) return text;
  const [, digits = '', many = '1'] = /^([\d\s-]+?)(?:\s*[x×*]\s*(\d{1,6}))?$/i.exec(text.value) ?? [];
  const read = readTradeNumber(digits === '' ? text.value : digits);
  if (!read.ok) return bad('not-accepted', `${shown(cell)} is not accepted: ${read.problem}.`);
  const pack = Number(many);
  if (pack < 1 || pack > MOST_IN_BAG)
    return bad('not-accepted', `${shown(cell)} names a bag of ${many}; it may hold 1 to ${MOST_IN_BAG}.`);
  return good({ gtin: read.gtin, pack });
};

const writeTradeNumbers = (numbers: readonly TradeNumberCell[]): string =>
  numbers.map(({ gtin, pack }) => `${writeTradeNumber(gtin)}${pack === 1 ? '' : ` x${pack}`}`).join('; ');

const columns = {
  maker: makerColumn,
  number: mustHave('Part number', partNumber, {
    also: [
      'number',
      'part no',
      'part',
      'part #',
      'item',
      'item number',
      'sku',
      'article',
      'article number',
      'partnumber',
      'teilenummer',
    ],
    says: 'The number as the maker prints it. Keep the column as text, or a spreadsheet eats zeros and letters.',
    example: '70-412A',
  }),
  name: column('Name', words(200), {
    also: ['description', 'part name', 'designation', 'title', 'bezeichnung'],
    says: 'What the part is.',
    example: 'Shear pin, auger',
  }),
  price: column('Price', numberIn({ most: MOST_MONEY, decimals: 2 }), {
    also: ['unit price', 'list price', 'retail', 'retail price', 'price each', 'preis', 'msrp'],
    says: "Price of one in the shop's currency, with a point or a comma for the decimals.",
    example: '2.50',
    write: (value) => value.toFixed(2),
  }),
  tradeNumbers: column('Trade numbers', listOf(tradeNumber, 50), {
    also: ['gtin', 'gtins', 'ean', 'ean code', 'upc', 'upc code', 'barcode', 'bar code', 'trade number', 'strichcode'],
    says: 'The digits under the bar codes of its bags (GTIN), semicolons between them; after an x how many are in the bag. Keep the column as text.',
    example: '6291041500213; 16291041500210 x10',
    write: writeTradeNumbers,
  }),
  ...fastenerColumns,
};
export type PartSheetRow = RowOf<typeof columns>;

export const parts = kind({
  title: 'Parts',
  about: 'One part of a maker.',
  columns,
  names: ['number'],
  keyOf: ({ maker, number }) => `${maker} ${number.toUpperCase().replace(/\s+/g, '')}`,
});

const waysOut = {
  'one-way': ['one way', 'replaced', 'superseded', 'superseded by', 'new for old'],
  'both-ways': ['both ways', 'interchangeable', 'both', 'either'],
  dead: ['none', 'discontinued', 'obsolete', 'no replacement', 'nla', 'gone'],
} as const;

const supersessionColumns = {
  maker: makerColumn,
  number: mustHave('Part number', partNumber, {
    also: ['number', 'part no', 'part', 'old number', 'old part', 'from', 'superseded part', 'part #'],
    says: 'The part that gives way.',
    example: '70-412A',
  }),
  by: column('Replaced by', partNumber, {
    also: ['new number', 'new part', 'to', 'superseded by', 'replacement', 'successor', 'supersession'],
    says: 'The part that takes its place; blank for one that is gone, and for a part that stays.',
    example: '70-412B',
  }),
  byMaker: column("Replacement's maker", makerCode, {
    also: ['new maker', 'to maker', 'replacement maker'],
    says: "Code of that part's maker where it is another.",
    example: '',
  }),
  how: column('How', oneOf(waysOut), {
    also: ['direction', 'kind', 'interchange', 'supersession type'],
    says: 'one-way: the new may replace the old. both-ways: either may replace the other. dead: gone, and nothing takes its place. Blank is one-way.',
    example: 'one-way',
  }),
};
export type SupersessionRow = RowOf<typeof supersessionColumns>;

export const supersessions = kind({
  title: 'Which part gives way to which',
  about:
    'One part that gives way to another. A list of parts with a column for the successor will do: rows without one are passed over.',
  columns: supersessionColumns,
  names: ['number', 'by'],
  keyOf: ({ maker, number }) => `${maker} ${number.toUpperCase().replace(/\s+/g, '')}`,
  check({ by, how }) {
    const said = by ?? null;
    if (how === 'dead' && said !== null)
      return [{ field: 'by', says: 'A part that is dead has no successor; leave one of the two blank.' }];
    if ((how ?? null) !== null && how !== 'dead' && said === null)
      return [{ field: 'by', says: `"${how}" needs the part that takes its place.` }];
    return [];
  },
});
