import type { RulingPiece, RulingView } from '../../../../libs/contracts';
import { barOf, timeScale, type TimeScale } from '../lib/time-scale';
import { pieceWords } from '../lib/piece-words';
import { saySpans } from '../lib/say';
import classes from './ruling-timeline.module.css';

/** The answer along the build dates: a span per required part with its number in it; gaps are paper, disputes are marked. */
export function RulingTimeline({ ruling, scale: given }: { ruling: RulingView; scale?: TimeScale }) {
  const scale =
    given ??
    timeScale(
      ruling.pieces.flatMap((piece) => piece.built),
      6,
    );
  return (
    <div className={given ? classes.bare : classes.frame} role="img" aria-label={inWords(ruling)}>
      <div className={classes.line}>
        {ruling.pieces.flatMap((piece, index) =>
          piece.built.map((span) => {
            const { left, width } = barOf(scale, span);
            return (
              <span
                key={`${index} ${span.from}`}
                className={classes[piece.outcome]}
                style={{ left: `${left}%`, width: `${width}%` }}
              >
                {pieceLabel(piece)}
              </span>
            );
          }),
        )}
      </div>
      {given ? null : (
        <div className={classes.years}>
          {scale.years.map(({ year, at }) => (
            <span key={year} style={{ left: `${at}%` }}>
              {year}
            </span>
          ))}
        </div>
      )}
    </div>
  );
}

function pieceLabel(piece: RulingPiece): string {
  if (piece.outcome === 'disputed') return '◁▷';
  return piece.required?.number ?? piece.allowed[0]?.number ?? '';
}

function inWords(ruling: RulingView): string {
  return ruling.pieces.map((piece) => `Built ${saySpans(piece.built)}: ${pieceWords(piece)}.`).join(' ');
}
