import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { DayField } from '../../components/day-field';
import type { LineSummary, LookUpRequest } from '../../../../../libs/contracts';
import { OptionFields } from '../../components/option-fields';
import classes from './look-up.module.css';

interface LookUpFormProps {
  lines: readonly LineSummary[];
  onAsk: (asked: Omit<LookUpRequest, 'evidence'>) => void;
}

const NOTHING: Omit<LookUpRequest, 'evidence'> = { lineCode: '', modelNumber: null, serial: null, options: {} };

/** Line, model and serial of the machine at the counter; Enter asks. */
export function LookUpForm({ lines, onAsk }: LookUpFormProps) {
  const [asked, setAsked] = useState(NOTHING);
  const set = (change: Partial<typeof NOTHING>) => setAsked({ ...asked, ...change });
  const line = lines.find(({ code }) => code === asked.lineCode);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (line) onAsk(asked);
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <NativeSelect
        label="Product line"
        value={asked.lineCode}
        onChange={(event) => setAsked({ ...NOTHING, serial: asked.serial, lineCode: event.currentTarget.value })}
      >
        <option value="">Pick the line</option>
        {lines.map(({ code, name, maker }) => (
          <option key={code} value={code}>{`${maker.name} ${name}`}</option>
        ))}
      </NativeSelect>
      <NativeSelect
        label="Model"
        disabled={!line}
        value={asked.modelNumber ?? ''}
        onChange={(event) => set({ modelNumber: event.currentTarget.value || null })}
      >
        <option value="">Not known</option>
        {(line?.models ?? []).map(({ number, name }) => (
          <option key={number} value={number}>{`${number} ${name}`}</option>
        ))}
      </NativeSelect>
      <TextInput
        label="Serial number"
        className={classes.number}
        value={asked.serial ?? ''}
        autoCapitalize="characters"
        spellCheck={false}
        onChange={(event) => set({ serial: event.currentTarget.value || null })}
      />
      <OptionFields options={line?.options ?? []} value={asked.options} onChange={(options) => set({ options })} />
      <DayField
        label="By the papers of"
        description="Today"
        value={asked.inForceOn ?? ''}
        onChange={(day) => set({ inForceOn: day || undefined })}
      />
      <Button type="submit" variant="filled" disabled={!line}>
        Which part?
      </Button>
    </form>
  );
}
