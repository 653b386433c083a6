import type { Figures } from '../../contracts';
import type { Day, DaySpan } from '../../day';

/** What figures are made of: closed-open days in the shop's time zone, and one location or (null) all. */
export interface FigureScope {
  readonly from: Day;
  readonly to: Day;
  readonly locationId: number | null;
}

/** Each figure is one statement over sets; what it counts stands in the contract's `FIGURE_MEANINGS`. */
export interface FigureStore {
  flaggedByBench(scope: FigureScope): Promise<Figures['byBench']>;
  flaggedByPart(scope: FigureScope, most: number): Promise<Figures['byPart']>;
  /** One row a bucket, in their order, empty ones too. */
  callbacks(buckets: readonly DaySpan[], locationId: number | null): Promise<Figures['callbacks']>;
  timeInStage(scope: FigureScope): Promise<Figures['stages']>;
  unsettledBuildDates(scope: FigureScope): Promise<Figures['unsettled']>;
  wrongParts(scope: FigureScope, most: number): Promise<Figures['wrongParts']>;
}
