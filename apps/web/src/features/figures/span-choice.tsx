import { Button } from '@mantine/core';
import { day, formatDay, parseDay } from '../../../../../libs/day';
import { DayField } from '../../components/day-field';
import { todayText } from '../../lib/say';
import type { ChosenSpan } from './figures-query';
import classes from './figures.module.css';

const USUAL = [
  { words: 'Last 30 days', days: 30 },
  { words: 'Last 90 days', days: 90 },
  { words: 'Last 365 days', days: 365 },
  { words: 'Last 5 years', days: 1_826 },
] as const;

interface SpanChoiceProps {
  /** What is shown now. */
  shown: { from: string; to: string };
  onSpan: (span: ChosenSpan) => void;
}

/** The days that are looked at: a usual span at one press, or any two days. */
export function SpanChoice({ shown, onSpan }: SpanChoiceProps) {
  const until = day(todayText()) + 1;
  const lastDay = formatDay(day(shown.to) - 1);
  return (
    <div className={`${classes.span} no-print`}>
      <DayField
        label="From"
        value={shown.from}
        onChange={(from) => (parseDay(from) === null ? undefined : onSpan({ ...shown, from }))}
      />
      <DayField
        label="Up to and with"
        value={lastDay}
        onChange={(to) => (parseDay(to) === null ? undefined : onSpan({ ...shown, to: formatDay(day(to) + 1) }))}
      />
      <div className={classes.usual} role="group" aria-label="Usual spans">
        {USUAL.map(({ words, days }) => (
          <Button key={days} onClick={() => onSpan({ from: formatDay(until - days), to: formatDay(until) })}>
            {words}
          </Button>
        ))}
      </div>
    </div>
  );
}
