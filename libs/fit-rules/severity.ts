import type { FastenerSeverity } from '../fastener';
import type { Action, BarReason } from './fit-rule';
import type { Verdict } from './verdict';

/** How much a flag asks of a manager, least first: look at it, put right when convenient, put right, act at once. */
export const severities = ['note', 'caution', 'serious', 'urgent'] as const;
export type Severity = (typeof severities)[number];

/** What the severity of a flag is made of. */
export interface SeverityGrounds {
  readonly verdict: Verdict;
  /** The strongest action of the rules that decide. */
  readonly action: Action;
  /** Reasons of the bars that hold on the part. */
  readonly barReasons: readonly BarReason[];
  /** What the strength computation says of a shear fastener; null where it says nothing. */
  readonly strength: FastenerSeverity | null;
}

const OF_ACTION: Readonly<Record<Action, Severity>> = {
  nothing: 'note',
  'next-service': 'caution',
  'call-back': 'serious',
  'stop-use': 'urgent',
};

const OF_BAR: Readonly<Record<BarReason, Severity>> = {
  'breaks-later': 'serious',
  'breaks-sooner': 'caution',
  'does-not-fit': 'caution',
  unsafe: 'urgent',
  other: 'caution',
};

/** One that may let go later is taken as one that does; one that holds beyond the drive line's rating guards nothing. */
const OF_STRENGTH: Readonly<Record<FastenerSeverity, Severity>> = {
  none: 'note',
  nuisance: 'caution',
  'not-told': 'serious',
  'drive-line-at-risk': 'serious',
  'above-rating': 'urgent',
};

/**
 * The severity of a flag: the worst of what the action, the bars and the strength say. A part that lets go later than
 * the required one puts the drive line at risk and is worse than one that lets go sooner. Right and allowed parts,
 * and those nothing can be said of yet, are notes.
 */
export function severityOf({ verdict, action, barReasons, strength }: SeverityGrounds): Severity {
  if (verdict === 'disputed') return 'caution';
  if (verdict !== 'wrong' && verdict !== 'outdated') return 'note';
  const all = [OF_ACTION[action], ...barReasons.map((reason) => OF_BAR[reason])];
  if (strength !== null) all.push(OF_STRENGTH[strength]);
  // A part that was never right here is a mistake of somebody's, however harmless.
  if (verdict === 'wrong') all.push('caution');
  return severities[Math.max(...all.map((one) => severities.indexOf(one)))]!;
}
