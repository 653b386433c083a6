import { Link } from '@tanstack/react-router';
import type { LookUpAnswer } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { EvidencePicture } from '../../components/evidence-picture';
import { RulingRow } from './ruling-row';
import classes from './look-up.module.css';

/** The possible build days, then per position the part, or what it depends on. */
export function LookUpResult({ answer }: { answer: LookUpAnswer }) {
  const { buildDates, positions, rulings, line } = answer;
  const boundaries = [...new Set(rulings.flatMap((ruling) => ruling.boundaries))].sort();
  return (
    <div className={classes.result}>
      <section aria-labelledby="look-up-when">
        <h2 id="look-up-when">When it was built</h2>
        <p className={classes.answer}>{buildDates.sentence}</p>
        {buildDates.evidence.length > 0 ? <EvidencePicture buildDates={buildDates} boundaries={boundaries} /> : null}
        {buildDates.lookAt.length > 0 ? (
          <>
            <h3>Look at next</h3>
            <ol className={classes.lookAt}>
              {buildDates.lookAt.map(({ kind, sentence }) => (
                <li key={kind}>{sentence}</li>
              ))}
            </ol>
          </>
        ) : null}
      </section>
      <section aria-labelledby="look-up-which">
        <h2 id="look-up-which">Which part goes where</h2>
        <Caution>The rule decides. Never fit a stronger fastener than the one required.</Caution>
        <ul>
          {positions.map((position) => (
            <RulingRow
              key={position.code}
              position={position}
              ruling={rulings.find((ruling) => ruling.position === position.code) ?? null}
            />
          ))}
        </ul>
        <p>
          <Link to="/wall-chart/$line" params={{ line: line.code }}>
            Wall chart of {line.maker} {line.name}
          </Link>
        </p>
      </section>
    </div>
  );
}
