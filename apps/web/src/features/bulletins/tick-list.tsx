import { Checkbox } from '@mantine/core';
import classes from './bulletins.module.css';

interface TickListProps {
  title: string;
  choices: readonly { value: string; label: string }[];
  ticked: readonly string[];
  onTick: (ticked: string[]) => void;
}

/** Several of several, each a press. */
export function TickList({ title, choices, ticked, onTick }: TickListProps) {
  if (choices.length === 0) return null;
  const change = (value: string, on: boolean) =>
    onTick(on ? [...ticked, value] : ticked.filter((one) => one !== value));
  return (
    <fieldset className={classes.ticks}>
      <legend>{title}</legend>
      {choices.map(({ value, label }) => (
        <Checkbox
          key={value}
          label={label}
          checked={ticked.includes(value)}
          onChange={(event) => change(value, event.currentTarget.checked)}
        />
      ))}
    </fieldset>
  );
}
