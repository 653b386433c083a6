/** Each kind of build-date evidence in the words of the bench. */
const WORDS: Record<string, string> = {
  'serial-scheme': 'Serial number',
  'printed-date': 'Printed build date',
  'standard-edition': 'Standard named on the plate',
  'engine-family': 'Engine family code',
  vin: 'Vehicle number',
  'tyre-code': 'Tyre date code',
  'part-stamp': 'Date stamp on a part',
  'production-span': 'Made from and until',
  receipt: 'Receipt',
  'first-seen': 'First seen in the shop',
};

/** The kind in words; a kind that is not known is given back as it is. */
export function evidenceWords(kind: string): string {
  return WORDS[kind] ?? kind;
}

/** What was typed, by the name of the field. */
export type Typed = Record<string, string>;

/** One field of a form for a piece of evidence. */
export interface EvidenceField {
  name: string;
  label: string;
  hint?: string;
  /** `date`: as precise as it was read; `edition`: one of the shop's list; `choice`: one of `choices` */
  input: 'text' | 'date' | 'day' | 'edition' | 'choice';
  optional?: boolean;
  /** wire value and words; the first is meant when nothing was chosen */
  choices?: readonly (readonly [value: string, words: string])[];
}

const text = (name: string, label: string, hint: string): EvidenceField => ({ name, label, hint, input: 'text' });
const date = (name: string, label: string, optional = false): EvidenceField => ({
  name,
  label,
  input: 'date',
  optional,
});

/**
 * The kinds a person can add by hand, with their fields. The serial comes from the plate form; the production span of
 * the line and the day the shop first saw the unit are there by themselves, and are entered only where they differ.
 */
export const EVIDENCE_FORMS: Record<string, readonly EvidenceField[]> = {
  'printed-date': [date('date', 'Date as printed')],
  'standard-edition': [{ name: 'edition', label: 'Standard and edition', input: 'edition' }],
  'engine-family': [
    text('family', 'Engine family code', '12 characters on the emission label.'),
    {
      name: 'engine',
      label: 'Engine',
      input: 'choice',
      choices: [
        ['small-spark-ignition', 'Small petrol engine'],
        ['other', 'Another engine, or not known'],
      ],
    },
  ],
  vin: [
    text('vin', 'Vehicle number', '17 characters, on the drawbar or its plate.'),
    {
      name: 'vehicle',
      label: 'What it is on',
      input: 'choice',
      choices: [
        ['other', 'Trailer or towed machine'],
        ['light', 'Car or light truck'],
      ],
    },
    {
      name: 'checkDigit',
      label: 'Check digit (place 9)',
      input: 'choice',
      choices: [
        ['required', 'Must be right (North America)'],
        ['not-used', 'Not used where it was sold'],
      ],
    },
  ],
  'tyre-code': [text('code', 'Week and year', 'The last three or four digits on the tyre.')],
  'part-stamp': [text('part', 'Which part', 'Such as hose or gearbox housing.'), date('date', 'Date on it')],
  receipt: [date('date', 'Date on the receipt')],
  'production-span': [date('first', 'Made from', true), date('last', 'Made until', true)],
  'first-seen': [{ name: 'on', label: 'Day first seen', input: 'day' }],
};

/** An edition of a standard as one value of a list. */
export const editionValue = (standard: string, edition: string): string => `${standard}|${edition}`;

/** The wire form of what was typed: texts trimmed, empty optional fields null, choices not made the first one. */
export function evidenceOf(kind: string, typed: Typed): { kind: string } & Record<string, string | null> {
  const fields = EVIDENCE_FORMS[kind] ?? [];
  const pairs = fields.flatMap((field): [string, string | null][] => {
    const value = (typed[field.name] ?? '').trim();
    if (field.input === 'edition') {
      const [standard = '', edition = ''] = value.split('|');
      return [
        ['standard', standard],
        ['edition', edition],
      ];
    }
    const chosen = value === '' ? (field.choices?.[0]?.[0] ?? '') : value;
    return [[field.name, chosen === '' && field.optional ? null : chosen]];
  });
  return { kind, ...(Object.fromEntries(pairs) as Record<string, string | null>) };
}

/** The first field that still has to be filled in, or null. */
export function missingField(kind: string, typed: Typed): EvidenceField | null {
  const fields = EVIDENCE_FORMS[kind] ?? [];
  const filled = (field: EvidenceField) => field.choices !== undefined || (typed[field.name] ?? '').trim() !== '';
  if (fields.every((field) => field.optional)) return fields.some(filled) ? null : (fields[0] ?? null);
  return fields.find((field) => !field.optional && !filled(field)) ?? null;
}
