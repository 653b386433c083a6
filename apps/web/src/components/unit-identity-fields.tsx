import { NativeSelect, Textarea, TextInput } from '@mantine/core';
import type { LineSummary, UnitIdentity } from '../../../../libs/contracts';
import { OptionFields } from './option-fields';
import classes from './unit-identity-fields.module.css';

interface UnitIdentityFieldsProps {
  lines: readonly LineSummary[];
  value: UnitIdentity;
  onChange: (value: UnitIdentity) => void;
}

/** Line, model, serial, options and the plate as it is written: what the gate out of intake asks for. */
export function UnitIdentityFields({ lines, value, onChange }: UnitIdentityFieldsProps) {
  const line = lines.find(({ code }) => code === value.lineCode);
  const set = (change: Partial<UnitIdentity>) => onChange({ ...value, ...change });
  return (
    <div className={classes.fields}>
      <NativeSelect
        label="Product line"
        value={value.lineCode ?? ''}
        onChange={(event) => set({ lineCode: event.currentTarget.value || null, modelNumber: null, options: {} })}
      >
        <option value="">Not known yet</option>
        {lines.map(({ code, name, maker }) => (
          <option key={code} value={code}>{`${maker.name} ${name}`}</option>
        ))}
      </NativeSelect>
      <NativeSelect
        label="Model"
        value={value.modelNumber ?? ''}
        disabled={!line}
        onChange={(event) => set({ modelNumber: event.currentTarget.value || null })}
      >
        <option value="">Not known yet</option>
        {(line?.models ?? []).map(({ number, name }) => (
          <option key={number} value={number}>{`${number} ${name}`}</option>
        ))}
      </NativeSelect>
      <TextInput
        label="Serial number"
        className={classes.number}
        value={value.serial ?? ''}
        autoCapitalize="characters"
        spellCheck={false}
        onChange={(event) => set({ serial: event.currentTarget.value || null, serialAbsent: null })}
      />
      {value.serial === null ? (
        <TextInput
          label="Or why there is none to read"
          value={value.serialAbsent ?? ''}
          onChange={(event) => set({ serialAbsent: event.currentTarget.value || null })}
        />
      ) : null}
      <OptionFields options={line?.options ?? []} value={value.options} onChange={(options) => set({ options })} />
      <Textarea
        label="Plate, as it is written"
        className={classes.wide}
        value={value.plate}
        minRows={3}
        autosize={false}
        rows={3}
        onChange={(event) => set({ plate: event.currentTarget.value })}
      />
    </div>
  );
}
