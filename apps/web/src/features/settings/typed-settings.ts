import { changeSettings, SOURCE_KINDS, type ChangeSettings, type ShopSettings } from '../../../../../libs/contracts';

export type SourceKind = (typeof SOURCE_KINDS)[number];

/** A kind of paper in the order of standing, the highest first; `tied` with the one above it. */
export interface Rank {
  readonly kind: SourceKind;
  readonly tied: boolean;
}

/** The settings as they stand in the fields. */
export interface TypedSettings {
  readonly months: string;
  readonly ranks: readonly Rank[];
  readonly soonerBelow: string;
  readonly laterAbove: string;
  readonly keepShelf: boolean;
}

/** What the fields show first. */
export function typedFrom({ lookBackMonths, standing, strengthThreshold, keepShelf }: ShopSettings): TypedSettings {
  return {
    months: String(lookBackMonths),
    ranks: ranksOf(standing),
    soonerBelow: String(strengthThreshold.soonerBelow),
    laterAbove: String(strengthThreshold.laterAbove),
    keepShelf,
  };
}

/** Moves a kind one step up (-1) or down (1); at the end of the list nothing moves. Who moves is tied with nobody. */
export function moved(ranks: readonly Rank[], from: number, by: -1 | 1): readonly Rank[] {
  const to = from + by;
  const one = ranks[from];
  if (!one || to < 0 || to >= ranks.length) return ranks;
  const others = ranks.filter((_, index) => index !== from);
  return untied([...others.slice(0, to), { ...one, tied: false }, ...others.slice(to)]);
}

/** Ties a kind with the one above it, or parts the two again. */
export function tied(ranks: readonly Rank[], at: number, together: boolean): readonly Rank[] {
  return untied(ranks.map((rank, index) => (index === at ? { ...rank, tied: together } : rank)));
}

export type ReadSettings =
  | { readonly ok: true; readonly changes: ChangeSettings; readonly none: boolean }
  | { readonly ok: false; readonly problem: string };

/** What differs from how things stand, ready to be sent; else the first thing that cannot be, in one sentence. */
export function changesIn(typed: TypedSettings, now: ShopSettings): ReadSettings {
  const limits = { soonerBelow: numberIn(typed.soonerBelow), laterAbove: numberIn(typed.laterAbove) };
  const { soonerBelow, laterAbove } = now.strengthThreshold;
  const sameLimits = limits.soonerBelow === soonerBelow && limits.laterAbove === laterAbove;
  const months = numberIn(typed.months);
  const read = changeSettings.safeParse({
    ...(months === now.lookBackMonths ? {} : { lookBackMonths: months }),
    ...(sameOrder(typed.ranks, ranksOf(now.standing)) ? {} : { standing: standingOf(typed.ranks) }),
    ...(sameLimits ? {} : { strengthThreshold: limits }),
    ...(typed.keepShelf === now.keepShelf ? {} : { keepShelf: typed.keepShelf }),
  });
  if (read.success) return { ok: true, changes: read.data, none: Object.keys(read.data).length === 0 };
  const field = String(read.error.issues[0]?.path.at(-1));
  return { ok: false, problem: PROBLEMS[field] ?? 'This cannot be kept.' };
}

const PROBLEMS: Record<string, string> = {
  lookBackMonths: 'The months must be a whole number from 0 to 600.',
  soonerBelow: 'The lower limit must be a ratio above 0 and at most 1.',
  laterAbove: 'The upper limit must be a ratio of 1 or more.',
};

function ranksOf(standing: ShopSettings['standing']): readonly Rank[] {
  const kinds = [...SOURCE_KINDS].sort((a, b) => standing[b] - standing[a]);
  return kinds.map((kind, index) => ({ kind, tied: index > 0 && standing[kinds[index - 1]!] === standing[kind] }));
}

/** Ten for the lowest, ten more with each step up. */
function standingOf(ranks: readonly Rank[]): ShopSettings['standing'] {
  const steps = ranks.map((_, index) => ranks.slice(index + 1).filter(({ tied: together }) => !together).length + 1);
  return Object.fromEntries(ranks.map(({ kind }, index) => [kind, steps[index]! * 10])) as ShopSettings['standing'];
}

/** Nothing stands above the first. */
function untied(ranks: readonly Rank[]): readonly Rank[] {
  return ranks.map((rank, index) => (index === 0 ? { ...rank, tied: false } : rank));
}

function sameOrder(a: readonly Rank[], b: readonly Rank[]): boolean {
  return a.every(({ kind, tied: together }, index) => kind === b[index]?.kind && together === b[index].tied);
}

/** `0.85` or `0,85`; NaN, which no field takes, for anything else. */
function numberIn(text: string): number {
  return /^\s*\d+([.,]\d+)?\s*$/.test(text) ? Number(text.replace(',', '.')) : NaN;
}
