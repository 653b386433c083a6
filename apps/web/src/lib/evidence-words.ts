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

/** One field of a form for a piece of evidence. */
export interface EvidenceField {
  name: string;
  label: string;
  hint: string;
  optional?: boolean;
}

const DATE_HINT = 'A year (2017), a month (2017-03), a week (2017-W09) or a day (2017-03-14).';

/** The kinds a person can add by hand, with their fields; the serial comes from the plate form. */
export const EVIDENCE_FORMS: Record<string, readonly EvidenceField[]> = {
  'printed-date': [{ name: 'date', label: 'Date as printed', hint: DATE_HINT }],
  'standard-edition': [
    { name: 'standard', label: 'Standard', hint: 'As the plate names it, without the year.' },
    { name: 'edition', label: 'Edition year', hint: 'Four digits, such as 2005.' },
  ],
  'engine-family': [{ name: 'family', label: 'Engine family code', hint: '12 characters on the emission label.' }],
  vin: [{ name: 'vin', label: 'Vehicle number', hint: '17 characters, on the drawbar or its plate.' }],
  'tyre-code': [{ name: 'code', label: 'Week and year', hint: 'The last three or four digits on the tyre.' }],
  'part-stamp': [
    { name: 'part', label: 'Which part', hint: 'Such as hose or gearbox housing.' },
    { name: 'date', label: 'Date on it', hint: DATE_HINT },
  ],
  'production-span': [
    { name: 'first', label: 'Made from', hint: DATE_HINT, optional: true },
    { name: 'last', label: 'Made until', hint: DATE_HINT, optional: true },
  ],
  receipt: [{ name: 'date', label: 'Date on the receipt', hint: DATE_HINT }],
  'first-seen': [{ name: 'on', label: 'Day first seen', hint: 'A day, such as 2017-03-14.' }],
};

/** The wire form of what was typed: texts trimmed, empty optional fields null. */
export function evidenceOf(
  kind: string,
  typed: Record<string, string>,
): { kind: string } & Record<string, string | null> {
  const fields = EVIDENCE_FORMS[kind] ?? [];
  const pairs = fields.map(({ name, optional }) => {
    const text = (typed[name] ?? '').trim();
    return [name, text === '' && optional ? null : text];
  });
  return { kind, ...(Object.fromEntries(pairs) as Record<string, string | null>) };
}

/** The first field that still has to be filled in, or null. */
export function missingField(kind: string, typed: Record<string, string>): EvidenceField | null {
  const fields = EVIDENCE_FORMS[kind] ?? [];
  const filled = (field: EvidenceField) => (typed[field.name] ?? '').trim() !== '';
  if (fields.every((field) => field.optional)) return fields.some(filled) ? null : (fields[0] ?? null);
  return fields.find((field) => !field.optional && !filled(field)) ?? null;
}
