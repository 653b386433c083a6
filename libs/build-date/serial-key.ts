import type { CompiledScheme } from './compile-scheme';

const SEQUENCE_WIDTH = 12;

/**
 * The key that puts serials of one scheme in the order they were built: year, part of the year, day of the month,
 * running number, plant, each padded so that text order is build order. Characters that tell neither are left out.
 */
export function keyOf(compiled: CompiledScheme, groups: readonly string[], year: number): string {
  const { fields, part, dayOfMonth } = compiled;
  const parts = compiled.year === 0 && part === 0 ? [] : [String(year).padStart(4, '0')];
  if (part > 0) parts.push(partNumber(compiled, groups).padStart(3, '0'));
  if (dayOfMonth > 0) parts.push(groups[dayOfMonth]!);
  for (const kind of ['sequence', 'plant'] as const)
    fields.forEach((field, index) => {
      if (field.kind === kind)
        parts.push(kind === 'sequence' ? groups[index + 1]!.padStart(SEQUENCE_WIDTH, '0') : groups[index + 1]!);
    });
  return parts.join('.');
}

function partNumber({ fields, part }: CompiledScheme, groups: readonly string[]): string {
  const field = fields[part - 1]!;
  return field.kind === 'month-letter' ? String(field.letters.indexOf(groups[part]!) + 1) : groups[part]!;
}
