import { NativeSelect, TextInput } from '@mantine/core';
import { lengthProblem, type MarksTyped } from './marks-typed';
import classes from './place-entry.module.css';

const LENGTH_HINT = 'With its unit: 8 mm, 0.25 in, 5/16 in.';

/** What a hand lens and a calliper show. */
export function MarksFields({ typed, onType }: { typed: MarksTyped; onType: (typed: MarksTyped) => void }) {
  const set = (change: Partial<MarksTyped>) => onType({ ...typed, ...change });
  return (
    <div className={classes.marks}>
      <TextInput
        label="Head marks"
        description="none, a number of lines such as 3 lines, or the stamp such as 8.8."
        value={typed.head}
        onChange={(event) => set({ head: event.currentTarget.value })}
        data-autofocus
      />
      <TextInput
        label="Diameter"
        description={LENGTH_HINT}
        value={typed.diameter}
        error={lengthProblem(typed.diameter, 'diameter')}
        onChange={(event) => set({ diameter: event.currentTarget.value })}
      />
      <TextInput
        label="Length under the head"
        description={LENGTH_HINT}
        value={typed.length}
        error={lengthProblem(typed.length, 'length')}
        onChange={(event) => set({ length: event.currentTarget.value })}
      />
      <NativeSelect
        label="Groove"
        value={typed.groove}
        onChange={(event) => set({ groove: event.currentTarget.value as MarksTyped['groove'] })}
      >
        <option value="">Not looked at</option>
        <option value="yes">Grooved</option>
        <option value="no">No groove</option>
      </NativeSelect>
      <TextInput
        label="Finish"
        description="It never decides by itself: makers change finishes."
        value={typed.finish}
        onChange={(event) => set({ finish: event.currentTarget.value })}
      />
    </div>
  );
}
