import { Button } from '@mantine/core';
import { useState } from 'react';
import type { StrengthView, TorqueUnit } from '../../../../libs/contracts';
import { torqueIn } from '../../../../libs/fastener';
import { sayNumber, sayTorque, torqueFirst } from '../lib/say';
import { axisTicks } from '../lib/torque-words';
import { Caution } from './caution';
import classes from './torque-bar.module.css';
import { torqueMarks, torqueInWords, type TorqueMark } from './torque-marks';
import { Said } from './said';

/**
 * How wrong a wrong shear fastener is: required part, fitted part and the drive line's rating on one torque axis, the
 * same in sentences, and the caution. The unit the person reads first comes first, until the other is asked for.
 */
export function TorqueBar({ strength }: { strength: StrengthView }) {
  const [unit, setUnit] = useState(torqueFirst);
  const other = unit === 'N·m' ? 'lbf·ft' : 'N·m';
  const marks = torqueMarks(strength);
  return (
    <figure className={classes.figure}>
      {marks.length > 0 ? <Picture marks={marks} unit={unit} /> : null}
      <figcaption>
        <p>
          {strength.signal ? <strong>{strength.signal}. </strong> : null}
          <strong>
            <Said>{strength.sentences[0] ?? ''}</Said>
          </strong>
        </p>
        {strength.sentences.slice(1).map((sentence) => (
          <p key={sentence}>
            <Said>{sentence}</Said>
          </p>
        ))}
        <Caution>{strength.caution}</Caution>
        {marks.length > 0 ? (
          <Button variant="subtle" px="xs" onClick={() => setUnit(other)}>
            Show {other} first
          </Button>
        ) : null}
      </figcaption>
    </figure>
  );
}

function Picture({ marks, unit }: { marks: readonly TorqueMark[]; unit: TorqueUnit }) {
  const ticks = axisTicks(torqueIn(Math.max(...marks.map(({ high }) => high)), unit));
  const most = ticks.at(-1)!;
  const at = (nm: number) => `${((torqueIn(nm, unit) / most) * 100).toFixed(2)}%`;
  return (
    <div role="img" aria-label={torqueInWords(marks, unit)}>
      <ul className={classes.key}>
        {marks.map((mark) => (
          <li key={mark.kind}>
            <span className={classes.swatch} data-kind={mark.kind} />
            {mark.label} <span className="num">{sayTorque(mark, unit)}</span>
          </li>
        ))}
      </ul>
      <div className={classes.axis}>
        {ticks.map((tick) => (
          <span key={tick} className={classes.tick} style={{ left: `${(tick / most) * 100}%` }}>
            {sayNumber(tick)}
          </span>
        ))}
        {marks.map((mark) => (
          <Mark key={mark.kind} mark={mark} at={at} />
        ))}
      </div>
      <div className={classes.unit}>{unit}</div>
    </div>
  );
}

function Mark({ mark: { kind, low, high }, at }: { mark: TorqueMark; at: (nm: number) => string }) {
  if (high <= low * 1.005) return <span className={classes.point} data-kind={kind} style={{ left: at(low) }} />;
  const style = { left: at(low), width: `calc(${at(high)} - ${at(low)})` };
  return <span className={classes.span} data-kind={kind} style={style} />;
}
