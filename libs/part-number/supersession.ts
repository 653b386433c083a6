import { z } from 'zod';
import type { PartKey } from './number-rules';

/** From when the shop knew it to when it no longer held it true: epoch milliseconds, closed-open. */
export interface KnownSpan {
  readonly from: number;
  readonly to: number;
}

export const supersessionDirections = ['one-way', 'both-ways', 'dead'] as const;
export const supersessionDirectionSchema = z.enum(supersessionDirections);
export type SupersessionDirection = z.infer<typeof supersessionDirectionSchema>;

/**
 * Part `from` gives way to part `to`. One way: `to` may replace `from`, not the other way round. Both ways: either may
 * replace the other. Dead: `from` is gone and nothing takes its place (`to` is null).
 */
export interface Supersession {
  readonly from: PartKey;
  readonly to: PartKey | null;
  readonly direction: SupersessionDirection;
  readonly known: KnownSpan;
}

/** What may take the place of a part, and how that is known. */
export interface StandIn {
  readonly part: PartKey;
  /** True when each may replace the other, step by step. */
  readonly bothWays: boolean;
  /** The parts gone through, from the asked part to the stand-in, both ends included; a shortest way. */
  readonly path: readonly PartKey[];
}

/** Something in the supersessions that a person has to mend. */
export type SupersessionFinding =
  /** One-way steps that come back to where they began; every part in the ring is named, smallest first. */
  | { readonly code: 'cycle'; readonly parts: readonly PartKey[] }
  /** One part gives way to several parts, and nothing says which. */
  | { readonly code: 'fork'; readonly from: PartKey; readonly to: readonly PartKey[] }
  /** A part is said to be dead and to give way to another. */
  | { readonly code: 'dead-and-replaced'; readonly part: PartKey; readonly to: readonly PartKey[] };
