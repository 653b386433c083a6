import { Button, TextInput } from '@mantine/core';
import { DayField } from '../../components/day-field';
import type { EditorState } from './editor-state';
import classes from './bulletins.module.css';

type Ends = EditorState['ends'];

/** Rules that this paper ends, each from a day on. */
export function EndsFields({ ends, onChange }: { ends: Ends; onChange: (ends: Ends) => void }) {
  const set = (index: number, change: Partial<Ends[number]>) =>
    onChange(ends.map((end, at) => (at === index ? { ...end, ...change } : end)));
  return (
    <div className={classes.bars}>
      {ends.map((end, index) => (
        <div key={index} className={classes.bar}>
          <TextInput
            label="Rule that ends"
            className={classes.numbers}
            value={end.rule}
            onChange={(event) => set(index, { rule: event.currentTarget.value })}
          />
          <DayField
            label="From"

            value={end.on}
            onChange={(day) => set(index, { on: day })}
          />
          <Button onClick={() => onChange(ends.filter((_, at) => at !== index))}>Leave it in force</Button>
        </div>
      ))}
    </div>
  );
}
