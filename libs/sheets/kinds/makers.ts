import { column, kind, mustHave, type RowOf } from '../column';
import { bad, good, shown } from '../cell';
import { listOf, nameOf, words, yesNo, type Reader } from '../readers';

/** A maker's code as part keys have it. */
export const makerCode: Reader<string> = (cell, how) => {
  const read = nameOf(12)(cell, how);
  if (!read.ok) return read;
  const code = read.value.toUpperCase();
  return /^[A-Z0-9]{1,12}$/.test(code)
    ? good(code)
    : bad('not-accepted', `${shown(cell)} must be 1 to 12 letters or digits.`);
};

/** `/P#`: what stands before and after the count on a bag. */
const packMark: Reader<{ readonly before: string; readonly after: string }> = (cell, how) => {
  const read = words(17)(cell, how);
  if (!read.ok) return read;
  const [before, after, ...rest] = read.value.split('#');
  if (
    before === undefined ||
    before === '' ||
    after === undefined ||
    rest.length > 0 ||
    before.length > 8 ||
    after.length > 8
  )
    return bad(
      'not-accepted',
      `${shown(cell)} must say how a bag is marked, with # for the count, such as /P# or -#PK.`,
    );
  return good({ before, after });
};

const columns = {
  code: mustHave('Maker', makerCode, {
    also: ['maker code', 'code', 'manufacturer code', 'brand code'],
    says: 'Short code of the maker, 1 to 12 letters or digits. Everything else names the maker by it.',
    example: 'HOLM',
  }),
  name: mustHave('Name', words(200), {
    also: ['maker name', 'manufacturer', 'brand', 'company'],
    says: 'The maker in full.',
    example: 'Holmgard',
  }),
  noise: column('Marks that do not matter', words(16), {
    also: ['noise', 'ignored characters', 'separators'],
    says: 'Characters in part numbers that make no other part, such as - and . written one after the other.',
    example: '-',
  }),
  packMarks: column('Bags are marked', listOf(packMark, 16), {
    also: ['pack marks', 'pack suffix', 'packs'],
    says: 'How a bag of several is written, with # for the count: /P# or -#PK. Several between semicolons.',
    example: '/P#',
    write: (marks) => marks.map(({ before, after }) => `${before}#${after}`).join('; '),
  }),
  letter: column('Last letter is the revision', yesNo, {
    also: ['revision letter', 'trailing letter is revision'],
    says: 'yes when a last letter after a digit makes another part of it. Blank is yes: the safe side.',
    example: 'yes',
  }),
};
export type MakerRow = RowOf<typeof columns>;

export const makers = kind({
  title: 'Makers and how they write part numbers',
  about: 'One maker.',
  columns,
  names: ['code'],
  keyOf: ({ code }) => code,
});
