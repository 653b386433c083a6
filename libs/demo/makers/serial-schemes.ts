import { formatDay, type Day } from '../../day';
import { SerialSchemeSchema, type SerialScheme } from '../../build-date';
import type { Calendar } from '../calendar';

const SOURCE = 'invented for the demo shop';
type Field = SerialScheme['fields'][number];

/** How each maker wrote serials over time, oldest first. The older a scheme, the less it tells. */
export function serialSchemes(calendar: Calendar): readonly SerialScheme[] {
  const { ago } = calendar;
  return [
    scheme(
      'BRAKEN',
      'BRAKEN-A',
      'year digit, month, running number',
      [ago(26, 1), ago(9, 1)],
      [{ kind: 'year-digit' }, { kind: 'month-number' }, { kind: 'sequence', length: 5 }],
    ),
    scheme(
      'BRAKEN',
      'BRAKEN-B',
      'two-digit year, month letter (no I), running number',
      [ago(9, 1), null],
      [{ kind: 'year-two-digits' }, { kind: 'month-letter', letters: 'ABCDEFGHJKLM' }, { kind: 'sequence', length: 5 }],
    ),
    scheme(
      'QUILMO',
      'QUILMO-A',
      'works, year digit, day of the year, running number',
      [ago(24, 1), ago(11, 7)],
      [
        { kind: 'plant', length: 1, codes: [{ code: 'K', name: 'Kelder works' }] },
        { kind: 'year-digit' },
        { kind: 'day-of-year' },
        { kind: 'sequence', length: 3 },
      ],
    ),
    scheme(
      'QUILMO',
      'QUILMO-B',
      'works, year, ISO week, running number',
      [ago(11, 7), null],
      [
        { kind: 'plant', length: 2, codes: [{ code: 'KD', name: 'Kelder works' }] },
        { kind: 'year-two-digits' },
        { kind: 'iso-week' },
        { kind: 'sequence', length: 4 },
      ],
    ),
    ...tarnvelde(calendar),
  ];
}

function tarnvelde(calendar: Calendar): SerialScheme[] {
  const { ago } = calendar;
  return [
    scheme(
      'TARNVE',
      'TARNVE-A',
      'year letter (no I, O, Q), month, running number',
      [ago(22, 1), ago(6, 1)],
      [
        { kind: 'year-letter', letters: 'ABCDEFGHJKLMNPRSTUVWXYZ', firstYear: yearAgo(calendar, 22) },
        { kind: 'month-number' },
        { kind: 'sequence', length: 4 },
      ],
    ),
    scheme(
      'TARNVE',
      'TARNVE-B',
      'four-digit year, day of the year, running number',
      [ago(6, 1), null],
      [
        { kind: 'literal', text: 'TV' },
        { kind: 'year-four-digits' },
        { kind: 'day-of-year' },
        { kind: 'sequence', length: 3 },
      ],
    ),
  ];
}

function scheme(maker: string, id: string, name: string, [from, to]: [Day, Day | null], fields: Field[]): SerialScheme {
  const validTo = to === null ? null : formatDay(to);
  return SerialSchemeSchema.parse({
    id,
    maker,
    lines: [],
    name,
    validFrom: formatDay(from),
    validTo,
    fields,
    source: SOURCE,
  });
}

function yearAgo(calendar: Calendar, years: number): number {
  return Number(formatDay(calendar.ago(years, 1)).slice(0, 4));
}

/** The scheme a maker used on a build day. */
export function schemeUsedOn(schemes: readonly SerialScheme[], maker: string, built: Day): SerialScheme {
  const day = formatDay(built);
  const found = schemes.find(
    (one) => one.maker === maker && (one.validFrom ?? '') <= day && (one.validTo === null || day < one.validTo),
  );
  if (!found) throw new RangeError(`the demo has no serial scheme of ${maker} for ${day}`);
  return found;
}
