import type { RulingView } from '../../../../libs/contracts';
import { pieceWords } from './piece-words';
import { capital } from './say';

/** A ruling in one line: what is required and allowed, or what the answer depends on. The whole why stands behind it. */
export function rulingWords(ruling: RulingView): string {
  const [first] = ruling.pieces;
  if (ruling.settled && first) return `${capital(pieceWords(first))}.`;
  const depends = [...new Set(ruling.dependsOn)];
  return depends.length > 0 ? `Not settled: it depends on ${depends.join(', and on ')}.` : ruling.sentence;
}
