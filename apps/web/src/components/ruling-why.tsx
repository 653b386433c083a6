import type { RulingPiece, RulingView } from '../../../../libs/contracts';
import { pieceWords } from '../lib/piece-words';
import { SOURCE_WORDS, sayDayText, saySpans } from '../lib/say';
import { RulingTimeline } from './ruling-timeline';
import { Said } from './said';
import classes from './ruling-why.module.css';

/** The whole of a ruling: the answer along the build dates, the paper behind each stretch, what it overrode and barred. */
export function RulingWhy({ ruling }: { ruling: RulingView }) {
  return (
    <div className={classes.why}>
      <p>
        <Said>{ruling.sentence}</Said>
      </p>
      {ruling.pieces.length > 1 ? <RulingTimeline ruling={ruling} /> : null}
      <ul>
        {ruling.pieces.map((piece, index) => (
          <li key={index}>
            <Piece piece={piece} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function Piece({ piece }: { piece: RulingPiece }) {
  return (
    <>
      <p>
        <strong>
          {piece.built.length > 0 ? `Built ${saySpans(piece.built)}` : 'Built on any day'}
          <Said>{`${piece.when.map((condition) => `, ${condition}`).join('')}:`}</Said>
        </strong>{' '}
        <Said>{`${pieceWords(piece)}.`}</Said>
      </p>
      {piece.source ? (
        <p>
          By {(SOURCE_WORDS[piece.source.kind] ?? piece.source.kind).toLowerCase()}{' '}
          <span className="num">{piece.source.number}</span> “{piece.source.title}”, {sayDayText(piece.source.issued)};
          rule <span className="num">{piece.rule}</span>.
        </p>
      ) : null}
      {piece.barred.map(({ part, reason }) => (
        <p key={part.key}>
          Barred: <span className="num">{part.number}</span>, {reason}.
        </p>
      ))}
      {piece.overridden.map(({ rule, source, why }) => (
        <p key={rule} className="soft">
          Set aside: {source ? `${SOURCE_WORDS[source.kind] ?? source.kind} ${source.number}` : rule}, {why}.
        </p>
      ))}
    </>
  );
}
