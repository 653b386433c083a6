import type { Day } from '../day';

/** The kinds of paper that say something about parts. */
export const sourceKinds = [
  'owners-manual',
  'parts-list',
  'revised-parts-list',
  'service-bulletin',
  'makers-advice',
  'shop-finding',
] as const;
export type SourceKind = (typeof sourceKinds)[number];

/** One paper. `effective` is null when the paper names no day; then it speaks from its issue day. */
export interface Source {
  readonly key: string;
  readonly kind: SourceKind;
  readonly publisher: string;
  readonly number: string;
  readonly title: string;
  readonly issued: Day;
  readonly effective: Day | null;
  /** The day the shop received it. */
  readonly received: Day;
}

/** How much each kind of paper counts against another: the higher number decides. Data, so a shop can change it. */
export type Standing = Readonly<Record<SourceKind, number>>;

/** The usual order: bulletin over maker's written advice over revised list over list over manual over shop finding. */
export const usualStanding: Standing = {
  'service-bulletin': 60,
  'makers-advice': 50,
  'revised-parts-list': 40,
  'parts-list': 30,
  'owners-manual': 20,
  'shop-finding': 10,
};

/** The first day on which a paper is in force: its effective day, or its issue day when it names none. */
export function inForceFrom(source: Pick<Source, 'issued' | 'effective'>): Day {
  return source.effective ?? source.issued;
}
