import { assert, constantFrom, integer, property, stringMatching } from 'fast-check';
import { checkDigit } from './check-digit';
import { readTradeNumber, tradeNumbersIn, writeTradeNumber } from './trade-number';

describe('a trade number', () => {
  // The check digits are those of gs1.se, of the well-known UPC-A example, and of GS1's own example.
  it.each([
    ['7300011000017', '07300011000017'],
    ['036000241457', '00036000241457'],
    ['6291041500213', '06291041500213'],
    ['629 1041-500213', '06291041500213'],
  ])('%s is kept with fourteen digits', (text, gtin) => {
    expect(readTradeNumber(text)).toEqual({ ok: true, gtin });
    expect(writeTradeNumber(gtin)).toBe(text.replace(/[ -]/g, ''));
  });

  it.each([
    ['6291041500214', 'its last digit should be 3 by the digits before it; read it again'],
    ['62910415002', 'a trade number (GTIN) has 8, 12, 13 or 14 digits'],
    ['70-412B', 'a trade number (GTIN) has 8, 12, 13 or 14 digits'],
    ['0000000000000', 'a trade number (GTIN) has 8, 12, 13 or 14 digits'],
  ])('%s is refused', (text, problem) => {
    expect(readTradeNumber(text)).toEqual({ ok: false, problem });
  });

  it('means the same in each of its lengths, is written so that it reads back, and stands no digit read wrongly', () => {
    assert(
      property(
        constantFrom(7, 11, 12, 13).chain((length) => stringMatching(new RegExp(`^[1-9]\\d{${length - 1}}$`))),
        integer({ min: 0, max: 13 }),
        integer({ min: 1, max: 9 }),
        (body, at, off) => {
          const digits = `${body}${checkDigit(body)}`;
          const read = readTradeNumber(digits);
          if (!read.ok) throw new Error(read.problem);
          for (const length of [12, 13, 14].filter((one) => one >= digits.length)) {
            expect(readTradeNumber(digits.padStart(length, '0'))).toEqual(read);
          }
          expect(readTradeNumber(writeTradeNumber(read.gtin))).toEqual(read);
          expect(tradeNumbersIn(`(01)${read.gtin}(10)L7`)).toEqual([read.gtin]);
          const place = at % digits.length;
          const wrong = (Number(digits[place]) + off) % 10;
          const misread = `${digits.slice(0, place)}${wrong}${digits.slice(place + 1)}`;
          expect(readTradeNumber(misread).ok).toBe(false);
        },
      ),
    );
  });
});
