import { Button, Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { BAR_WORDS } from './bulletin-words';
import type { TypedBar } from './typed-rule';
import classes from './bulletins.module.css';

/** Parts that are barred, each with why. */
export function BarFields({
  barred,
  onChange,
}: {
  barred: readonly TypedBar[];
  onChange: (barred: TypedBar[]) => void;
}) {
  const set = (index: number, change: Partial<TypedBar>) =>
    onChange(barred.map((bar, at) => (at === index ? { ...bar, ...change } : bar)));
  return (
    <div className={classes.bars}>
      {barred.map((bar, index) => (
        <div key={index} className={classes.bar}>
          <TextInput
            label="Barred part"
            className={classes.numbers}
            value={bar.part}
            onChange={(event) => set(index, { part: event.currentTarget.value })}
          />
          <NativeSelect
            label="Because it"
            value={bar.reason}
            onChange={(event) => set(index, { reason: event.currentTarget.value as TypedBar['reason'] })}
            data={Object.entries(BAR_WORDS).map(([value, label]) => ({ value, label }))}
          />
          <TextInput
            label="Note"
            value={bar.note}
            onChange={(event) => set(index, { note: event.currentTarget.value })}
          />
          <Checkbox
            label="Ends the warranty"
            checked={bar.voidsWarranty}
            onChange={(event) => set(index, { voidsWarranty: event.currentTarget.checked })}
          />
          <Button onClick={() => onChange(barred.filter((_, at) => at !== index))}>Take this bar out</Button>
        </div>
      ))}
      <div>
        <Button
          onClick={() => onChange([...barred, { part: '', reason: 'breaks-later', note: '', voidsWarranty: false }])}
        >
          Bar a part
        </Button>
      </div>
    </div>
  );
}
