import { Checkbox } from '@mantine/core';
import classes from './programs.module.css';

interface TickChoicesProps<T extends string> {
  legend: string;
  choices: readonly T[];
  /** what each one is about */
  says: (choice: T) => string;
  chosen: readonly T[];
  onChange: (chosen: T[]) => void;
}

/** Any number of named choices, each with what it is about. */
export function TickChoices<T extends string>({ legend, choices, says, chosen, onChange }: TickChoicesProps<T>) {
  return (
    <Checkbox.Group label={legend} value={[...chosen]} onChange={onChange}>
      <div className={classes.choices}>
        {choices.map((choice) => (
          <Checkbox key={choice} value={choice} label={choice} description={says(choice)} />
        ))}
      </div>
    </Checkbox.Group>
  );
}
