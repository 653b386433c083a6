import type { SerialScheme, StandardEdition } from '../../build-date';

/** What every row of the shop's data carries besides itself. */
export interface ShopDataRow {
  readonly id: number;
  readonly version: number;
  /** ISO 8601, UTC. */
  readonly updatedAt: string;
  readonly updatedBy: string | null;
}

export interface SchemeRow extends ShopDataRow {
  readonly makerName: string;
  readonly scheme: SerialScheme;
  /** Units whose serial is read by it now. */
  readonly units: number;
}

export interface EditionRow extends ShopDataRow {
  readonly edition: StandardEdition;
}

export interface ShopDataStore {
  /** By maker's name, then by the time they were used. */
  schemes(): Promise<readonly SchemeRow[]>;
  scheme(id: number): Promise<SchemeRow | null>;
  /** Null when the scheme's id is taken. */
  insertScheme(makerId: number, scheme: SerialScheme, personId: number): Promise<number | null>;
  /** Raises the version when it is still `version`; false when it is not. */
  updateScheme(id: number, version: number, scheme: SerialScheme, personId: number): Promise<boolean>;
  /** By standard, newest edition first. */
  editions(): Promise<readonly EditionRow[]>;
  edition(id: number): Promise<EditionRow | null>;
  insertEdition(edition: StandardEdition, personId: number): Promise<number | null>;
  updateEdition(id: number, version: number, edition: StandardEdition, personId: number): Promise<boolean>;
  /** Adds those that are not there yet; what is there, changed by a person or not, stays. Answers how many it added. */
  addMissingEditions(editions: readonly StandardEdition[]): Promise<number>;
}
