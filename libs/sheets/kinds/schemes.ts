import type { SerialField } from '../../build-date';
import { column, kind, mustHave, type RowOf } from '../column';
import { dayIn } from '../read-day';
import { listOf, nameOf, words, type Reader } from '../readers';
import { makerCode } from './makers';
import { FIELD_HELP, readField, writeField } from './scheme-notation';

const field: Reader<SerialField> = (cell, how) => {
  const text = words(4_000)(cell, how);
  // The scheme's own schema looks at the ranges, once all fields are there.
  return text.ok ? (readField(text.value) as ReturnType<Reader<SerialField>>) : text;
};

const columns = {
  maker: mustHave('Maker', makerCode, {
    also: ['maker code', 'manufacturer', 'brand'],
    says: "The maker's code, as under makers.",
    example: 'HOLM',
  }),
  name: mustHave('Scheme', words(120), {
    also: ['name', 'scheme name'],
    says: 'A name for this way of writing serials; with the maker it tells one scheme from another.',
    example: 'year, month, running number',
  }),
  lines: column('Lines', listOf(nameOf(80), 500), {
    also: ['line', 'product lines'],
    says: 'Codes of the lines it was used on, between semicolons; blank is every line of the maker.',
    example: 'SNOW-2',
  }),
  from: column('Used from', dayIn, {
    also: ['valid from', 'from'],
    says: 'The first build day it was used; blank where nobody knows.',
    example: '2010-01-01',
  }),
  until: column('Used until', dayIn, {
    also: ['valid to', 'valid until', 'until', 'to'],
    says: 'The first build day it was no longer used; blank while it is.',
    example: '',
  }),
  fields: mustHave('Fields', listOf(field, 20), {
    also: ['format', 'pattern', 'layout'],
    says: `What stands in a serial from left to right, between semicolons: ${FIELD_HELP}.`,
    example: 'year-two-digits; month-number; sequence 4',
    write: (fields) => fields.map(writeField).join('; '),
  }),
  source: column('Says who', words(300), {
    also: ['source', 'paper'],
    says: 'The paper that says so.',
    example: 'Service handbook, page 4',
  }),
};
export type SchemeSheetRow = RowOf<typeof columns>;

export const schemes = kind({
  title: 'Serial schemes',
  about: 'One way in which a maker writes serial numbers.',
  columns,
  names: [],
  keyOf: ({ maker, name }) => `${maker} ${name.toLowerCase()}`,
});
