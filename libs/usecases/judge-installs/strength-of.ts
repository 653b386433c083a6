import { compareFasteners } from '../../fastener';
import type { Judgement } from '../../fit-rules';
import { jointKey, type CatalogueShapes } from '../ports/catalogue-store';

/** How a wrong shear fastener compares with the required one. */
export interface JudgedStrength {
  /** Torque at which it lets go over that of the required one; one and one where the shop counts them as alike. */
  readonly ratio: { readonly low: number; readonly high: number };
  readonly sentence: string;
}

/**
 * The strength behind a verdict: for one known part, one required part, both of known shape, in a position that takes
 * a shear fastener; null otherwise. Small differences within the shop's limits make no flag worse.
 */
export function strengthOf(
  { question: { unit, position, parts } }: Pick<Judgement, 'question'>,
  required: string | null,
  { fasteners, joints }: CatalogueShapes,
): JudgedStrength | null {
  const joint = joints.get(jointKey(unit.line, position));
  const is = parts.length === 1 ? fasteners.get(parts[0]!) : undefined;
  const asked = required === null ? undefined : fasteners.get(required);
  if (!joint || !is || !asked) return null;
  const compared = compareFasteners(is, asked, joint);
  if (!compared.ok) return null;
  const { class: kind, ratio, sentences } = compared.value;
  return { ratio: kind === 'as-required' ? { low: 1, high: 1 } : ratio, sentence: sentences[0]! };
}
