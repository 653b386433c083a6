import { assert, integer, property, record, stringMatching } from 'fast-check';
import { checkDigit, hasRightCheckDigit, readUnitTag, unitTagCode } from './check-digit';
import { FNC1, looksLikeGs1, readGs1, sayGs1Problem } from './read-gs1';

describe('a check digit', () => {
  // The first is the example of gs1.se, the second a well-known worked UPC-A example, the third GS1's own.
  it.each([
    ['730001100001', 7],
    ['03600024145', 7],
    ['629104150021', 3],
  ])('of %s is %i', (digits, digit) => {
    expect(checkDigit(digits)).toBe(digit);
    expect(hasRightCheckDigit(`${digits}${digit}`)).toBe(true);
  });

  it('of 6291041500214 is wrong', () => {
    expect(hasRightCheckDigit('6291041500214')).toBe(false);
  });

  it('finds every single digit that is read wrongly', () => {
    assert(
      property(
        stringMatching(/^\d{4,13}$/),
        integer({ min: 0, max: 12 }),
        integer({ min: 1, max: 9 }),
        (text, at, off) => {
          const whole = `${text}${checkDigit(text)}`;
          const place = at % whole.length;
          const wrong = (Number(whole[place]) + off) % 10;
          expect(hasRightCheckDigit(`${whole.slice(0, place)}${wrong}${whole.slice(place + 1)}`)).toBe(false);
        },
      ),
    );
  });
});

describe('a unit’s tag', () => {
  it('is read back, and not with another digit', () => {
    assert(
      property(integer({ min: 1, max: 999_999_999 }), integer({ min: 1, max: 9 }), (unitId, off) => {
        const code = unitTagCode(unitId);
        expect(readUnitTag(code)).toEqual({ unitId, right: true });
        expect(readUnitTag(code.toLowerCase())).toEqual({ unitId, right: true });
        const other = `${code.slice(0, -1)}${(Number(code.slice(-1)) + off) % 10}`;
        expect(readUnitTag(other)).toEqual({ unitId, right: false });
      }),
    );
    for (const text of ['26-0661', 'U12', 'U-1', '70-412B']) expect(readUnitTag(text)).toBeNull();
  });
});

describe('a GS1 element string', () => {
  const gtin = stringMatching(/^\d{13}$/).map((text) => `${text}${checkDigit(text)}`);
  const word = (most: number) => stringMatching(new RegExp(`^[A-Z0-9./-]{1,${most}}$`));
  const bag = record({ '01': gtin, '10': word(20), '21': word(20), '240': word(30), '241': word(30) });

  it('is read back field by field, as scanned and as printed', () => {
    assert(
      property(bag, (fields) => {
        const pairs = Object.entries(fields);
        const scanned = pairs.map(([field, value]) => `${field}${value}${field === '01' ? '' : FNC1}`).join('');
        const printed = pairs.map(([field, value]) => `(${field})${value}`).join('');
        for (const text of [scanned, `]C1${scanned}`, `]d2${FNC1}${scanned}`, printed]) {
          expect(looksLikeGs1(text)).toBe(true);
          expect(readGs1(text)).toEqual({ ok: true, fields: new Map(pairs) });
        }
      }),
    );
  });

  it.each([
    ['(01)06291041500214', 'The check digit of 06291041500214 is wrong: scan it again, or type it.'],
    ['(01)0629', 'The field 01 is shorter than it may be (“0629”): scan the code again.'],
    ['(99)X', 'The code has a field “99” that is not read here.'],
    [
      `]C1${'10'}${'A'.repeat(21)}`,
      `The field 10 is longer than it may be (“${'A'.repeat(21)}”): scan the code again.`,
    ],
    ['(10)A(10)B', 'The code has the field 10 twice.'],
    ['(240)', 'The field 240 is shorter than it may be (“”): scan the code again.'],
  ])('%j is refused in one sentence', (text, sentence) => {
    const read = readGs1(text);
    expect(read.ok ? 'read' : sayGs1Problem(read.problem)).toBe(sentence);
  });

  it('is not seen in ticket numbers, part numbers and names', () => {
    for (const text of ['26-0661', '30-1127', '70 412b', 'Ole Brand', '0000 555 0199', '19A00999']) {
      expect(looksLikeGs1(text)).toBe(false);
    }
  });
});
