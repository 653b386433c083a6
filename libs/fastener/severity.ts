import type { FastenerComparison } from './comparison';

/**
 * How bad a wrong fastener is, from least to worst; a higher index is worse. A part that breaks sooner costs a
 * visit, one that breaks later costs a gear case, and one that may do so is kept between the two.
 */
export const FASTENER_SEVERITIES = ['none', 'nuisance', 'not-told', 'drive-line-at-risk', 'above-rating'] as const;
export type FastenerSeverity = (typeof FASTENER_SEVERITIES)[number];

/** The place of a comparison on the scale. */
export function severityOf(comparison: FastenerComparison): FastenerSeverity {
  const exceeds = comparison.againstRated?.exceeds ?? 'no';
  if (comparison.class === 'as-required') return 'none';
  if (comparison.class === 'breaks-sooner') return 'nuisance';
  if (comparison.class === 'breaks-later') return exceeds === 'no' ? 'drive-line-at-risk' : 'above-rating';
  if (!comparison.mayBreakLater) return 'nuisance';
  return exceeds === 'yes' ? 'above-rating' : 'not-told';
}

/** Below 0 when `one` is less bad than `other`, 0 when alike, above 0 when worse. */
export function compareSeverity(one: FastenerSeverity, other: FastenerSeverity): number {
  return FASTENER_SEVERITIES.indexOf(one) - FASTENER_SEVERITIES.indexOf(other);
}

/**
 * The signal word to print with it: WARNING could cause serious injury, NOTICE concerns damage only
 * (ANSI Z535.4-2007 clause 4.14; ISO 3864-2 uses the same words). Null where there is nothing to signal.
 */
export function signalWordOf(severity: FastenerSeverity): 'WARNING' | 'NOTICE' | null {
  if (severity === 'none') return null;
  return severity === 'nuisance' ? 'NOTICE' : 'WARNING';
}
