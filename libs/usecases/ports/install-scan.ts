import type { UnitFacts } from '../../fit-rules';
import type { PlaceOfUnit } from '../judge-installs/consequence-plan';
import type { ScopeChoice } from './install-store';

/** A unit as a scan reads it: by numbers, its line as an id. */
export interface ScannedUnit extends Omit<UnitFacts, 'line'> {
  readonly id: number;
}

/** Installs of a chunk in columns, one row per index: what judging by numbers needs, and no more. */
export interface InstallScan {
  readonly count: number;
  readonly unitId: Int32Array;
  readonly positionId: Int32Array;
  readonly place: Int32Array;
  /** 0 where the part could not be told for sure. */
  readonly partId: Int32Array;
  /** CAME_WITH_UNIT where it came with the unit. */
  readonly fittedOn: Int32Array;
  /** Index into `verdicts`; -1 before it was first judged. */
  readonly verdict: Int32Array;
  readonly units: ReadonlyMap<number, ScannedUnit>;
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
  scan(choice: ScopeChoice): Promise<InstallScan>;
  positions(): Promise<ReadonlyMap<number, PlacedPosition>>;
  /** Keys of the parts with these ids. */
  partKeys(ids: readonly number[]): Promise<ReadonlyMap<number, string>>;
}
