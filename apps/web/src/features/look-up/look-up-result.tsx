import { Link } from '@tanstack/react-router';
import type { LookUpAnswer } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { Conflicts } from '../../components/conflicts';
import { LookAtNext } from '../../components/look-at-next';
import { OtherReadings, type OtherReading } from '../../components/other-readings';
import { EvidencePicture } from '../../components/evidence-picture';
import { WhatSplits } from '../../components/what-splits';
import { RulingRow } from './ruling-row';
import { Said } from '../../components/said';
import classes from './look-up.module.css';

interface LookUpResultProps {
  answer: LookUpAnswer;
  /** a number read otherwise, by a person's hand */
  onTake: (reading: OtherReading) => () => void;
}

/** The possible build days, then per position the part, or what it depends on. */
export function LookUpResult({ answer, onTake }: LookUpResultProps) {
  const { buildDates, positions, rulings, line } = answer;
  const boundaries = [...new Set(rulings.flatMap((ruling) => ruling.boundaries))].sort();
  return (
    <div className={classes.result}>
      <section aria-labelledby="look-up-when">
        <h2 id="look-up-when">When it was built</h2>
        <p className={classes.answer}>
          <Said>{buildDates.sentence}</Said>
        </p>
        {buildDates.evidence.length > 0 ? <EvidencePicture buildDates={buildDates} boundaries={boundaries} /> : null}
        <WhatSplits buildDates={buildDates} />
        <Conflicts buildDates={buildDates} />
        <OtherReadings buildDates={buildDates} onTake={onTake} />
        <LookAtNext buildDates={buildDates} ruled={rulings.length > 0} />
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
