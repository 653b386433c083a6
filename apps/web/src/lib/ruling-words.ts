import type { RulingView } from '../../../../libs/contracts';
import { pieceWords } from './piece-words';

/** A ruling in one line: what is required and allowed, or what the answer depends on. The whole why stands behind it. */
export function rulingWords(ruling: RulingView): string {
  const [first] = ruling.pieces;
  if (ruling.settled && first) {
    const words = pieceWords(first);
    return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  }
  const depends = [...new Set(ruling.dependsOn)];
  return depends.length > 0 ? `Not settled: it depends on ${depends.join(', and on ')}.` : ruling.sentence;
}
