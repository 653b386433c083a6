import { bad, good, shown } from '../cell';
import { column, kind, mustHave, type RowOf } from '../column';
import { dayIn } from '../read-day';
import { listOf, nameOf, numberIn, words, type Reader } from '../readers';
import { jointColumns } from './joint-columns';
import { makerCode } from './makers';

interface Named {
  readonly code: string;
  readonly name: string;
}

/** `S2 = Two`: a code and what it is called; the code alone will do. */
const named: Reader<Named> = (cell, how) => {
  const text = typeof cell === 'number' ? good(String(cell)) : words(282)(cell, how);
  if (!text.ok) return text;
  const at = text.value.indexOf('=');
  const [code, name] = at === -1 ? [text.value, ''] : [text.value.slice(0, at).trim(), text.value.slice(at + 1).trim()];
  if (code === '' || code.length > 80 || name.length > 200)
    return bad('not-accepted', `${shown(cell)} must be a code, or a code = a name.`);
  return good({ code, name });
};
const writeNamed = (all: readonly Named[]) =>
  all.map(({ code, name }) => (name === '' ? code : `${code} = ${name}`)).join('; ');

const columns = {
  code: mustHave('Line', nameOf(80), {
    also: ['line code', 'product line', 'code', 'series', 'family'],
    says: 'Short code of the product line.',
    example: 'SNOW-2',
  }),
  maker: mustHave('Maker', makerCode, {
    also: ['maker code', 'manufacturer', 'brand'],
    says: "The maker's code, as under makers.",
    example: 'HOLM',
  }),
  name: mustHave('Name', words(200), {
    also: ['line name', 'description', 'title'],
    says: 'What the line is called.',
    example: 'Snow thrower 2',
  }),
  sort: column('Sort of machine', words(80), {
    also: ['kind', 'type', 'category', 'machine'],
    says: 'tiller, chipper, snow thrower, log splitter, cutter, or another.',
    example: 'snow thrower',
  }),
  from: mustHave('Made from', dayIn, {
    also: ['produced from', 'first production', 'start of production', 'from'],
    says: 'The first day it was made.',
    example: '2012-01-01',
  }),
  until: column('Made until', dayIn, {
    also: ['produced until', 'end of production', 'until', 'to'],
    says: 'The first day it was no longer made; blank while it is.',
    example: '2021-01-01',
  }),
  models: column('Models', listOf(named, 500), {
    also: ['model', 'model numbers'],
    says: 'Model numbers between semicolons, each with = and its name where it has one.',
    example: 'S2 = Two; S2W = Two wide',
    write: writeNamed,
  }),
  options: column('Options', listOf(named, 60), {
    also: ['option', 'equipment'],
    says: 'What can be fitted or not: codes between semicolons, each with = and its name.',
    example: 'cab = Cab',
    write: writeNamed,
  }),
};
export type LineSheetRow = RowOf<typeof columns>;

export const lines = kind({
  title: 'Product lines and models',
  about: 'One product line with its models.',
  columns,
  names: ['code'],
  keyOf: ({ code }) => code,
  check: ({ from, until }) =>
    until && until <= from
      ? [{ field: 'until', says: `It must be later than ${from}, the first day it was made.` }]
      : [],
});

const positionColumns = {
  line: mustHave('Line', nameOf(80), {
    also: ['line code', 'product line', 'series'],
    says: 'Code of the product line.',
    example: 'SNOW-2',
  }),
  code: mustHave('Position', nameOf(80), {
    also: ['position code', 'code', 'pos', 'item', 'reference'],
    says: 'Short code of the position.',
    example: 'AUG-PIN',
  }),
  name: mustHave('Name', words(200), {
    also: ['position name', 'description'],
    says: 'What it is called.',
    example: 'Auger shear pin',
  }),
  assembly: mustHave('Assembly', words(200), {
    also: ['group', 'sub-assembly', 'unit'],
    says: 'The assembly it is in.',
    example: 'Auger',
  }),
  places: column('Places', listOf(words(80), 60), {
    also: ['place names', 'places names'],
    says: 'Name of each place in order, between semicolons. Blank is one place, named as the position.',
    example: 'left; right',
  }),
  sketchX: column('Sketch across', numberIn({ most: 100 }), {
    also: ['x'],
    says: "Where its dot sits on the line's sketch, 0 to 100 from the left.",
    example: '',
  }),
  sketchY: column('Sketch down', numberIn({ most: 60 }), {
    also: ['y'],
    says: 'The same from the top, 0 to 60.',
    example: '',
  }),
  ...jointColumns,
};
export type PositionSheetRow = RowOf<typeof positionColumns>;

export const positions = kind({
  title: 'Positions',
  about: 'One position of a product line, in the order the shop looks at them.',
  columns: positionColumns,
  names: ['line', 'code'],
  keyOf: ({ line, code }) => JSON.stringify([line, code]),
});
