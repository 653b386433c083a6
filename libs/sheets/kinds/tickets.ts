import { column, kind, mustHave, type RowOf } from '../column';
import { dayIn } from '../read-day';
import { listOf, nameOf, numberIn, oneOf, words } from '../readers';
import { hasValue, rowNumber } from './owners';
import { partNumber } from './parts';

const columns = {
  number: mustHave('Ticket', nameOf(30), {
    also: ['ticket number', 'job', 'job number', 'work order', 'order', 'invoice', 'invoice number', 'auftrag'],
    says: 'Number of the ticket. Rows with the same number are one ticket.',
    example: 'A-1041',
  }),
  opened: mustHave('Opened', dayIn, {
    also: ['opened on', 'date in', 'received', 'intake', 'date'],
    says: 'The day the unit came in.',
    example: '2023-11-20',
  }),
  closed: mustHave('Handed over', dayIn, {
    also: ['closed', 'closed on', 'date out', 'completed', 'handed over on', 'finished'],
    says: 'The day it went out again.',
    example: '2023-11-24',
  }),
  unitNumber: column('Unit number', rowNumber, {
    also: ['unit id'],
    says: 'Number of the unit in this shop, as an export gives it; or else line and serial.',
    example: '',
  }),
  line: column('Line', nameOf(80), {
    also: ['product line', 'line code', 'series', 'machine'],
    says: 'Code of the product line.',
    example: 'SNOW-2',
  }),
  serial: column('Serial', nameOf(60), {
    also: ['serial number', 'serial no', 's/n', 'sn', 'seriennummer'],
    says: 'Serial number of the unit. The unit must be on file: bring owners and units in first.',
    example: '17020001',
  }),
  complaint: column('Complaint', words(2_000), {
    also: ['problem', 'fault', 'work', 'description', 'notes'],
    says: 'What it came in for.',
    example: 'Auger does not turn',
  }),
  position: column('Position', nameOf(80), {
    also: ['position code', 'pos', 'where'],
    says: 'Code of the position a part was found or fitted in; blank on a row that records no part.',
    example: 'AUG-PIN',
  }),
  place: column('Place', numberIn({ least: 1, most: 60, decimals: 0 }), {
    also: ['place number'],
    says: 'Which place of the position, from 1. Blank is 1.',
    example: '1',
  }),
  side: column(
    'Found or left',
    oneOf({ found: ['as found', 'removed', 'old'], left: ['as left', 'fitted', 'installed', 'new'] }),
    {
      also: ['side', 'found/left'],
      says: 'found: what was there. left: what was fitted or stayed in. Blank is left.',
      example: 'left',
    },
  ),
  part: column('Part number', partNumber, {
    also: ['part', 'part no', 'part fitted', 'number', 'item', 'sku'],
    says: 'Number of the part as it is printed. One that no catalogue lists is kept as it was read.',
    example: '70-412A',
  }),
  condition: column(
    'Condition',
    oneOf({ sound: ['good', 'ok', 'new'], worn: ['used'], sheared: ['broken', 'snapped'], missing: ['none', 'empty'] }),
    {
      also: ['state'],
      says: 'sound, worn, sheared or missing.',
      example: 'sound',
    },
  ),
  fittedOn: column('Fitted on', dayIn, {
    also: ['fitted', 'date fitted', 'installed on'],
    says: 'The day it was fitted. Blank: it came with the unit, or nobody knows. Where the file has no such column, what was left counts as fitted on the day of handing over.',
    example: '2023-11-22',
  }),
  leftOut: column('Not looked at because', words(500), {
    also: ['left out because', 'left out'],
    says: 'Why a place was not looked at.',
    example: '',
  }),
  canBe: column('Can be', listOf(partNumber, 40), {
    says: 'Numbers of all parts it can be, where its own could not be read.',
    example: '',
  }),
  told: column('Told by', words(1_000), { says: 'How that was told, in a sentence.', example: '' }),
  cancelled: column('Cancelled because', words(1_000), {
    also: ['cancelled', 'cancel reason'],
    says: 'Only for a ticket that was cancelled.',
    example: '',
  }),
};
export type TicketSheetRow = RowOf<typeof columns>;

const RECORD = ['place', 'side', 'part', 'condition', 'fittedOn', 'leftOut', 'canBe', 'told'] as const;

/** At least one of them makes a record. */
const RECORDED = ['part', 'canBe', 'condition', 'leftOut', 'told'] as const;

export const tickets = kind({
  title: 'Past tickets and the parts recorded on them',
  about: 'One part in one place on one ticket that is closed. What was left takes part in rechecks and callbacks.',
  columns,
  names: ['number', 'serial', 'part'],
  keyOf: ({ number }) => number,
  check(row) {
    const problems: { field: keyof typeof columns; says: string }[] = [];
    if (row.closed < row.opened)
      problems.push({ field: 'closed', says: `It must not be before ${row.opened}, the day the unit came in.` });
    if (!row.position && RECORD.some((field) => hasValue(row[field])))
      problems.push({ field: 'position', says: 'A part is recorded, but its position is blank.' });
    if (!row.unitNumber && !(row.line && row.serial))
      problems.push({ field: 'serial', says: 'Name the unit by line and serial, or by its unit number.' });
    if (row.position && !RECORDED.some((field) => hasValue(row[field])))
      problems.push({
        field: 'part',
        says: 'Give the part number, or its condition, or why the place was not looked at.',
      });
    if (row.fittedOn && row.fittedOn > row.closed)
      problems.push({ field: 'fittedOn', says: `It must not be after ${row.closed}, the day of handing over.` });
    return problems;
  },
  more: [{ side: 'found', condition: 'sheared', fittedOn: '', number: 'A-1041' }],
});
