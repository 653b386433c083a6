import { Checkbox } from '@mantine/core';
import classes from './programs.module.css';

interface TickChoicesProps<T extends string> {
  legend: string;
  choices: readonly T[];
  /** a choice in plain words; its name stands beside them, for whoever writes the program */
  called: (choice: T) => string;
  /** what each one is about, where its words do not say all */
  says?: (choice: T) => string;
  chosen: readonly T[];
  onChange: (chosen: T[]) => void;
}

/** Any number of named choices, each with what it is about. */
export function TickChoices<T extends string>({
  legend,
  choices,
  called,
  says,
  chosen,
  onChange,
}: TickChoicesProps<T>) {
  return (
    <Checkbox.Group label={legend} value={[...chosen]} onChange={onChange}>
      <div className={classes.choices}>
        {choices.map((choice) => (
          <Checkbox
            key={choice}
            value={choice}
            label={called(choice)}
            description={
              <>
                {says ? `${says(choice)}. ` : null}
                <span className={`num ${classes.code}`}>{choice}</span>
              </>
            }
          />
        ))}
      </div>
    </Checkbox.Group>
  );
}
