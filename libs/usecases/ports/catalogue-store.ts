import type { ShopData } from '../../build-date';
import type { FastenerSpec, ShearJoint } from '../../fastener';
import type { NumberRules } from '../../part-number';
import type { RevisionMark } from './rulebook-store';

export interface BenchRow {
  readonly id: number;
  readonly code: string;
  readonly name: string;
  readonly location: string;
}

export interface MakerRow {
  readonly id: number;
  readonly code: string;
  readonly name: string;
  readonly numberRules: NumberRules;
}

export interface PositionRow {
  readonly id: number;
  readonly code: string;
  readonly name: string;
  readonly assembly: string;
  readonly places: number;
  readonly placeNames: readonly string[];
  readonly sketchX: number;
  readonly sketchY: number;
  readonly joint: ShearJoint | null;
}

/** Days as `YYYY-MM-DD`; `producedUntil` is the first day on which it was no longer made. */
export interface LineRow {
  readonly id: number;
  readonly code: string;
  readonly name: string;
  readonly kind: string;
  readonly maker: { readonly id: number; readonly code: string; readonly name: string };
  readonly models: readonly { readonly id: number; readonly number: string; readonly name: string }[];
  readonly options: readonly { readonly code: string; readonly name: string }[];
  readonly producedFrom: string;
  readonly producedUntil: string | null;
  readonly sketch: string;
}

export interface PartRow {
  readonly id: number;
  readonly key: string;
  readonly number: string;
  readonly name: string;
  readonly maker: string;
  readonly listed: boolean;
  readonly fastener: FastenerSpec | null;
  readonly priceMinor: number | null;
}

/** A trade number as it is kept, fourteen digits, and the pieces in the bag that carries it. */
export interface TradeNumberRow {
  readonly partId: number;
  readonly gtin: string;
  readonly pack: number;
}

/** What the catalogue tells about strength and names, for judging and saying without asking again. */
export interface CatalogueShapes {
  /** By part key; only parts that are fasteners of known shape. */
  readonly fasteners: ReadonlyMap<string, FastenerSpec>;
  /** By line code and position code, as {@link jointKey} puts them together; only positions that take one. */
  readonly joints: ReadonlyMap<string, ShearJoint>;
  /** The number as the maker prints it, by part key. */
  readonly numbers: ReadonlyMap<string, string>;
  /** Names of lines by code. */
  readonly lines: ReadonlyMap<string, string>;
  /** Names of positions by line code and position code, as {@link jointKey} puts them together. */
  readonly positions: ReadonlyMap<string, string>;
}

/** How a position of a line is named in {@link CatalogueShapes}. */
export const jointKey = (line: string, position: string): string => JSON.stringify([line, position]);

/** A catalogue that knows nothing. */
export const NO_SHAPES: CatalogueShapes = {
  fasteners: new Map(),
  joints: new Map(),
  numbers: new Map(),
  lines: new Map(),
  positions: new Map(),
};

/** What stands of everything that "which part?" is answered from, in marks that differ whenever any of it does. */
export interface ShopMark {
  /** Tells what makers, lines, models, positions, parts, serial schemes and editions are from what they were. */
  readonly catalogue: string;
  readonly rulebook: RevisionMark;
  /** The setting of how strong a wrong fastener may be, as it is kept. */
  readonly threshold: unknown;
}

export interface CatalogueStore {
  /** Asked before what it marks is read: what is read afterwards is then at least as new. */
  mark(): Promise<ShopMark>;
  shapes(): Promise<CatalogueShapes>;
  benches(): Promise<readonly BenchRow[]>;
  makers(): Promise<readonly MakerRow[]>;
  lines(): Promise<readonly LineRow[]>;
  lineByCode(code: string): Promise<LineRow | null>;
  /** In the order the shop looks at them. */
  positionsOf(lineId: number): Promise<readonly PositionRow[]>;
  partsByKeys(keys: readonly string[]): Promise<readonly PartRow[]>;
  partsByIds(ids: readonly number[]): Promise<readonly PartRow[]>;
  /** Listed parts whose canonical number begins with one of the given, or whose name holds the word; at most `most`. */
  searchParts(canonicals: readonly string[], word: string, most: number): Promise<readonly PartRow[]>;
  /** The parts of the trade numbers, given as fourteen digits, with the pieces in the bag that carries each. */
  partsByTradeNumbers(gtins: readonly string[]): Promise<readonly { gtin: string; pack: number; part: PartRow }[]>;
  /** In order of part and number. */
  tradeNumbersOf(partIds: readonly number[]): Promise<readonly TradeNumberRow[]>;
  /** False when some part carries it already. */
  addTradeNumber(number: TradeNumberRow): Promise<boolean>;
  /** False when the part does not carry it. */
  removeTradeNumber(partId: number, gtin: string): Promise<boolean>;
  /** A number that was read off a part but is in no catalogue; the row that is there already wins. */
  insertUnlisted(part: { key: string; makerId: number; number: string; canonical: string }): Promise<PartRow>;
  shopData(): Promise<ShopData>;
}
