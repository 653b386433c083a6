import { useQuery } from '@tanstack/react-query';
import { Fragment } from 'react';
import { RulingTimeline } from '../../components/ruling-timeline';
import { lookUpQuery } from '../../lib/look-up-query';
import { barOf, timeScale } from '../../lib/time-scale';
import { saySpanText } from '../../lib/say';
import { TickList } from './tick-list';
import { endAfter, type TypedRule } from './typed-rule';
import classes from './bulletins.module.css';

interface RulePictureProps {
  rule: TypedRule;
  onReplaces: (replaces: string[]) => void;
}

/** What holds now in the rule's positions and, under it, the build dates the new rule speaks of. */
export function RulePicture({ rule, onReplaces }: RulePictureProps) {
  const now = useQuery(
    lookUpQuery({
      lineCode: rule.line,
      modelNumber: rule.models[0] ?? null,
      serial: null,
      options: rule.options,
      evidence: [],
    }),
  );
  if (!now.data) return null;
  const rulings = now.data.rulings.filter(({ position }) => rule.positions.includes(position));
  const span = { from: rule.builtFirst || null, to: endAfter(rule.builtLast) };
  const scale = timeScale([...rulings.flatMap(({ pieces }) => pieces.flatMap(({ built }) => built)), span], 8);
  const { left, width } = barOf(scale, span);
  const named = new Map(
    rulings.flatMap(({ pieces }) =>
      pieces.flatMap(({ rule: key, source }) => (key && source ? [[key, `${key} (${source.number})`] as const] : [])),
    ),
  );
  return (
    <>
      <div className={classes.picture}>
        {rulings.map((ruling) => (
          <Fragment key={ruling.position}>
            <span>{now.data.positions.find(({ code }) => code === ruling.position)?.name ?? ruling.position} now</span>
            <RulingTimeline ruling={ruling} scale={scale} />
          </Fragment>
        ))}
        <strong>This rule</strong>
        <div className={classes.span} role="img" aria-label={`This rule speaks of units built ${saySpanText(span)}.`}>
          <span style={{ left: `${left}%`, width: `${width}%` }} />
        </div>
      </div>
      <TickList
        title="Takes the place of"
        choices={[...named].map(([value, label]) => ({ value, label }))}
        ticked={rule.replaces}
        onTick={onReplaces}
      />
    </>
  );
}
