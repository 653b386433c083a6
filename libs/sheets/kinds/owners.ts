import { bad, good, shown } from '../cell';
import { column, kind, mustHave, type RowOf } from '../column';
import { dayIn, partialDate } from '../read-day';
import { listOf, nameOf, numberIn, words, yesNo, type Reader } from '../readers';

export const rowNumber = numberIn({ least: 1, most: 2_147_483_647, decimals: 0 });

/** `ANSI B71.3 2005`: a standard and the year of its edition. */
const edition: Reader<{ readonly standard: string; readonly edition: string }> = (cell, how) => {
  const read = words(85)(cell, how);
  if (!read.ok) return read;
  const found = /^(.*\S)[\s:-]+(\d{4})$/.exec(read.value);
  return found
    ? good({ standard: found[1]!, edition: found[2]! })
    : bad('not-accepted', `${shown(cell)} must be a standard and the year of its edition, such as ANSI B71.3 2005.`);
};

/** `2015-03 engine belt`: a date and what it is stamped on. */
const stamp: Reader<{ readonly date: string; readonly part: string }> = (cell, how) => {
  const read = words(160)(cell, how);
  if (!read.ok) return read;
  const [first = '', ...rest] = read.value.split(' ');
  const date = partialDate(first, how);
  const part = rest.join(' ').trim();
  return date.ok && part !== ''
    ? good({ date: date.value, part })
    : bad('not-accepted', `${shown(cell)} must be a date and the part it is stamped on, such as 2015-03 belt.`);
};

/** `cab`, or `no cab`: what is fitted and what is not. */
export const fittedOption: Reader<{ readonly option: string; readonly fitted: boolean }> = (cell, how) => {
  const read = words(84)(cell, how);
  if (!read.ok) return read;
  const without = /^(?:no|not|without) +(.+)$/i.exec(read.value);
  return good(without ? { option: without[1]!, fitted: false } : { option: read.value, fitted: true });
};
export const writeOptions = (all: readonly { readonly option: string; readonly fitted: boolean }[]): string =>
  all.map(({ option, fitted }) => (fitted ? option : `no ${option}`)).join('; ');

/** Each kind of evidence that a sheet can bring, with its column. */
const evidenceColumns = {
  printedDate: column('Date on the plate', listOf(partialDate), {
    also: ['build date', 'printed date', 'manufactured', 'date of manufacture', 'mfg date'],
    says: 'A build date that is printed on the data plate: 2017, 2017-03 or 2017-03-14.',
    example: '',
  }),
  receipt: column('Bought on', listOf(partialDate), {
    also: ['receipt', 'purchase date', 'bought', 'sold on', 'date of purchase', 'registered'],
    says: 'Date of a receipt: the unit is not younger.',
    example: '2017-05',
  }),
  firstSeen: column('First seen', listOf(dayIn), {
    also: ['first visit', 'customer since'],
    says: 'The day the shop first saw the unit: it is not younger.',
    example: '2018-02-03',
  }),
  standard: column('Standard on the plate', listOf(edition), {
    also: ['standard', 'safety standard'],
    says: 'A standard named on the plate with the year of its edition, such as ANSI B71.3 2005: the unit is not older.',
    example: '',
    write: (all) => all.map((one) => `${one.standard} ${one.edition}`).join('; '),
  }),
  engineFamily: column('Engine family', listOf(nameOf(20)), {
    also: ['emission family', 'epa family'],
    says: 'The 12 characters of the emission label.',
    example: '',
  }),
  vin: column('VIN', listOf(nameOf(20)), {
    says: 'The 17 characters of a towed unit that is registered.',
    example: '',
  }),
  tyreCode: column('Tyre code', listOf(nameOf(8)), {
    also: ['tire code', 'dot code'],
    says: 'Week and year at the end of the code on a tyre.',
    example: '',
  }),
  stamps: column('Stamped parts', listOf(stamp), {
    says: 'Dates stamped on parts, each with the part: 2015-03 belt.',
    example: '',
    write: (all) => all.map((one) => `${one.date} ${one.part}`).join('; '),
  }),
};

const columns = {
  ownerNumber: column('Owner number', rowNumber, {
    also: ['owner id', 'customer number'],
    says: 'Number of an owner who is in this shop already, as an export gives it; leave it out for new ones.',
    example: '',
  }),
  name: mustHave('Owner', words(200), {
    also: ['name', 'owner name', 'customer', 'customer name', 'client', 'kunde', 'full name'],
    says: 'Name of the owner. With the phone (or else the e-mail) it tells one owner from another.',
    example: 'Ole Brand',
  }),
  phone: column('Phone', nameOf(50), {
    also: ['telephone', 'tel', 'mobile', 'phone number', 'cell', 'telefon'],
    says: 'Keep the column as text, or a spreadsheet eats the zero in front.',
    example: '0555 0101',
  }),
  email: column('E-mail', words(200), { also: ['email', 'mail', 'e mail'], says: 'One address.', example: '' }),
  address: column('Address', words(500), {
    also: ['street', 'postal address', 'anschrift'],
    says: 'The whole address in one cell.',
    example: '1 Mill Lane',
  }),
  consent: column('May be called', yesNo, {
    also: ['consent', 'may call', 'callback consent', 'contact allowed'],
    says: 'yes when the owner agreed to be called when an answer changes. Blank is no for a new owner.',
    example: 'yes',
  }),
  unitNumber: column('Unit number', rowNumber, {
    also: ['unit id'],
    says: 'Number of a unit that is in this shop already, as an export gives it; leave it out for new ones.',
    example: '',
  }),
  line: column('Line', nameOf(80), {
    also: ['product line', 'line code', 'series', 'machine'],
    says: 'Code of the product line; blank on a row that is about an owner alone.',
    example: 'SNOW-2',
  }),
  model: column('Model', nameOf(80), {
    also: ['model number', 'model no', 'type'],
    says: 'Model number.',
    example: 'S2',
  }),
  serial: column('Serial', nameOf(60), {
    also: ['serial number', 'serial no', 's/n', 'sn', 'vin/serial', 'seriennummer'],
    says: 'The serial number as it is on the plate. Keep the column as text. With the line it tells one unit from another.',
    example: '17020001',
  }),
  serialAbsent: column('No serial because', words(200), {
    also: ['serial absent', 'no serial'],
    says: 'Why there is no serial to read; only where Serial is blank.',
    example: '',
  }),
  options: column('Options', listOf(fittedOption, 60), {
    also: ['option', 'equipment'],
    says: 'What is fitted, as codes of the line: cab. What is not: no cab. What is not named is not known.',
    example: 'cab',
    write: writeOptions,
  }),
  plate: column('Plate', words(1_000), {
    also: ['plate text', 'data plate'],
    says: 'What else stands on the data plate.',
    example: '',
  }),
  ...evidenceColumns,
};
export type OwnerSheetRow = RowOf<typeof columns>;
export type UnitEvidenceCells = Pick<OwnerSheetRow, keyof typeof evidenceColumns>;

const digits = (text: string): string => text.replace(/[^0-9]/g, '');
const squeezed = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** What tells one owner of a location from another: the name, with the phone's digits or else the e-mail. */
export function ownerKey({
  name,
  phone,
  email,
}: {
  name: string;
  phone?: string | null;
  email?: string | null;
}): string {
  const number = digits(phone ?? '');
  return `${squeezed(name)}|${number === '' ? squeezed(email ?? '') : number}`;
}

const UNIT_FIELDS = ['unitNumber', 'model', 'serial', 'serialAbsent', 'options', 'plate'] as const;

export const owners = kind({
  title: 'Owners and their units',
  about: 'One unit with its owner; an owner of several units stands on several rows, one without a unit on one.',
  columns,
  names: ['serial', 'phone'],
  keyOf: (row) => (row.ownerNumber ? `#${row.ownerNumber}` : ownerKey(row)),
  check(row) {
    const problems: { field: keyof typeof columns; says: string }[] = [];
    if (row.serial && row.serialAbsent)
      problems.push({ field: 'serialAbsent', says: 'A serial is given, and a reason why there is none; give one.' });
    if (!row.line && UNIT_FIELDS.some((field) => hasValue(row[field])))
      problems.push({ field: 'line', says: 'A unit is described, but its product line is blank.' });
    return problems;
  },
  more: [
    {
      name: 'Ada Lind',
      phone: '0555 0102',
      address: '2 Mill Lane',
      consent: 'no',
      line: '',
      model: '',
      serial: '',
      options: '',
      receipt: '',
      firstSeen: '',
    },
  ],
});

export function hasValue(value: unknown): boolean {
  return value !== null && value !== undefined && !(Array.isArray(value) && value.length === 0);
}

/** The evidence that a row brings, as the build-date library reads it, in the order of the columns. */
export function evidenceOfCells(cells: UnitEvidenceCells): readonly { kind: string; data: Record<string, string> }[] {
  const all = <T>(list: readonly T[] | null | undefined, kindName: string, data: (one: T) => Record<string, string>) =>
    (list ?? []).map((one) => ({ kind: kindName, data: data(one) }));
  return [
    ...all(cells.printedDate, 'printed-date', (date) => ({ date })),
    ...all(cells.receipt, 'receipt', (date) => ({ date })),
    ...all(cells.firstSeen, 'first-seen', (on) => ({ on })),
    ...all(cells.standard, 'standard-edition', (one) => ({ ...one })),
    ...all(cells.engineFamily, 'engine-family', (family) => ({ family })),
    ...all(cells.vin, 'vin', (vin) => ({ vin })),
    ...all(cells.tyreCode, 'tyre-code', (code) => ({ code })),
    ...all(cells.stamps, 'part-stamp', ({ part, date }) => ({ part, date })),
  ];
}

/** The same read backwards, for an export; pieces of other kinds have no column. */
export function cellsOfEvidence(
  pieces: readonly { kind: string; data: Readonly<Record<string, unknown>> }[],
): UnitEvidenceCells {
  const of = <T>(kindName: string, read: (data: Readonly<Record<string, string>>) => T): T[] =>
    pieces.filter((one) => one.kind === kindName).map(({ data }) => read(data as Record<string, string>));
  return {
    printedDate: of('printed-date', ({ date }) => date!),
    receipt: of('receipt', ({ date }) => date!),
    firstSeen: of('first-seen', ({ on }) => on!),
    standard: of('standard-edition', (data) => ({ standard: data['standard']!, edition: data['edition']! })),
    engineFamily: of('engine-family', ({ family }) => family!),
    vin: of('vin', ({ vin }) => vin!),
    tyreCode: of('tyre-code', ({ code }) => code!),
    stamps: of('part-stamp', ({ part, date }) => ({ part: part!, date: date! })),
  };
}
