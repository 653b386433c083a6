import type { RulingPiece } from '../../../../libs/contracts';

/** What one stretch of a ruling says, in a few words without a full stop. */
export function pieceWords(piece: Pick<RulingPiece, 'outcome' | 'required' | 'allowed'>): string {
  if (piece.outcome === 'disputed') return 'the papers disagree';
  if (piece.outcome === 'nothing-said') return 'no paper says anything';
  const allowed = piece.allowed.map((part) => part.number);
  if (!piece.required) return `${listed(allowed)} allowed`;
  return allowed.length === 0
    ? `${piece.required.number} required`
    : `${piece.required.number} required, ${listed(allowed)} allowed`;
}

function listed(numbers: readonly string[]): string {
  return numbers.length < 2 ? (numbers[0] ?? '') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}
