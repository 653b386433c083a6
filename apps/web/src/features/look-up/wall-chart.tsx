import { Fragment } from 'react';
import type { LookUpAnswer } from '../../../../../libs/contracts';
import { RulingTimeline } from '../../components/ruling-timeline';
import { timeScale } from '../../lib/time-scale';
import classes from './look-up.module.css';

/** Positions down, build dates across, a span per required part with its number in it. */
export function WallChart({ answer }: { answer: LookUpAnswer }) {
  const scale = timeScale(answer.rulings.flatMap(({ pieces }) => pieces.flatMap(({ built }) => built)));
  return (
    <div className={classes.chart}>
      <span />
      <div className={classes.axis} aria-hidden="true">
        {scale.years.map(({ year, at }) => (
          <span key={year} style={{ left: `${at}%` }}>
            {year}
          </span>
        ))}
      </div>
      {answer.positions.map((position) => {
        const ruling = answer.rulings.find((one) => one.position === position.code);
        return (
          <Fragment key={position.code}>
            <strong>{position.name}</strong>
            {ruling ? <RulingTimeline ruling={ruling} scale={scale} /> : <span className="soft">nothing said</span>}
          </Fragment>
        );
      })}
    </div>
  );
}
