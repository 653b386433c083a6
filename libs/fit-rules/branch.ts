import type { OptionCondition } from './fit-rule';
import type { SerialPiece } from './position-table';
import type { PieceWhere, RulingPiece } from './ruling';

/** One piece of a branch with the key of its outcome. */
export interface KeyedPiece {
  readonly piece: RulingPiece;
  readonly key: string;
}

/** One way the unit can be, apart from its build date, with its pieces in order of build date. */
export interface Branch {
  readonly model: PieceWhere['model'];
  readonly serial: SerialPiece;
  readonly options: readonly OptionCondition[];
  readonly pieces: readonly KeyedPiece[];
}
