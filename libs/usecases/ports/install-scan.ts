import { CAME_WITH_UNIT, type UnitFacts } from '../../fit-rules';
import type { PlaceOfUnit } from '../judge-installs/consequence-plan';
import type { ScopeChoice } from './install-store';

/**
 * Facts of the units of a scan, column by column: an object for each would live as long as the scan, and clearing them
 * away costs more than judging by them.
 */
export interface ScannedUnits {
  readonly count: number;
  /** In ascending order. */
  readonly id: Int32Array;
  /** The one span of its possible build dates; empty where there is none, or more than one. */
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  readonly model: readonly (string | null)[];
  readonly options: readonly UnitFacts['options'][];
  readonly serialScheme: readonly (string | null)[];
  readonly serialKey: readonly (string | null)[];
}

/** Where each number of an install stands in its row of a scan. */
export const SCANNED = { unit: 0, position: 1, place: 2, part: 3, fittedOn: 4, verdict: 5 } as const;
/** How many numbers a row of a scan has. */
export const SCANNED_COLUMNS = 6;
/** In a row of a scan: a part that could not be told for sure, a part that came with the unit, no verdict so far. */
export const NOT_THERE = CAME_WITH_UNIT;

/** Installs of a chunk as numbers: what judging by numbers needs, and no more. */
export interface InstallScan {
  readonly count: number;
  /** Row after row; see SCANNED. A verdict is an index into `verdicts`. */
  readonly rows: Int32Array;
  readonly units: ScannedUnits;
  /** Places of these units about which something stands: a flag, a reason to call, a note. */
  readonly standing: readonly PlaceOfUnit[];
}

/** A position with the line it belongs to, both by code. */
export interface PlacedPosition {
  readonly line: string;
  readonly position: string;
}

/**
 * Reads many installs fast, as a stream beside the transactions: it takes no lock and sees what was committed when it
 * began.
 */
export interface InstallScans {
  /** Answers what `look` does. The rows are there until it has answered; then they make room for those of another scan. */
  scan<T>(choice: ScopeChoice, look: (scan: InstallScan) => Promise<T>): Promise<T>;
  positions(): Promise<ReadonlyMap<number, PlacedPosition>>;
  /** Keys of the parts with these ids. */
  partKeys(ids: readonly number[]): Promise<ReadonlyMap<number, string>>;
}
