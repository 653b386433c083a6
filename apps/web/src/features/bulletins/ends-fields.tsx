import { Button, TextInput } from '@mantine/core';
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
          <TextInput
            label="From"
            type="date"
            value={end.on}
            onChange={(event) => set(index, { on: event.currentTarget.value })}
          />
          <Button onClick={() => onChange(ends.filter((_, at) => at !== index))}>Leave it in force</Button>
        </div>
      ))}
    </div>
  );
}
