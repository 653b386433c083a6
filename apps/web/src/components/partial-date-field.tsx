import { NativeSelect, TextInput } from '@mantine/core';
import { useState } from 'react';
import { sayPartialDate } from '../../../../libs/day';
import { saySentence } from '../lib/say';
import classes from './evidence-fields.module.css';

const PRECISIONS = {
  day: { words: 'To the day', type: 'date', hint: 'No day given' },
  month: { words: 'To the month', type: 'text', hint: 'Year and month, such as 2017-03' },
  week: { words: 'To the week', type: 'text', hint: 'Year and ISO week, such as 2017-W09' },
  year: { words: 'To the year', type: 'text', hint: 'Four digits' },
} as const;
type Precision = keyof typeof PRECISIONS;

interface PartialDateFieldProps {
  label: string;
  value: string;
  onChange: (value: string) => void;
}

/** A date just as precise as it was read: a month that is printed is not made a day of. */
export function PartialDateField({ label, value, onChange }: PartialDateFieldProps) {
  const [precision, setPrecision] = useState<Precision>('day');
  const { type, hint } = PRECISIONS[precision];
  const said = saySentence(sayPartialDate(value));
  const change = (next: Precision) => {
    setPrecision(next);
    onChange('');
  };
  return (
    <div className={classes.partial}>
      <NativeSelect
        label="How precise"
        value={precision}
        onChange={(event) => change(event.currentTarget.value as Precision)}
        data={Object.entries(PRECISIONS).map(([one, { words }]) => ({ value: one, label: words }))}
      />
      <TextInput
        label={label}
        description={value !== '' && said !== value ? said : hint}
        type={type}
        className={classes.field}
        value={value}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </div>
  );
}
