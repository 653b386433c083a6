import { TextInput } from '@mantine/core';
import { useState } from 'react';
import type { SerialField } from '../../../../../libs/build-date';
import { leftOutOf, lettersWithout } from './field-words';

interface ParametersProps<F extends SerialField = SerialField> {
  field: F;
  onChange: (field: SerialField) => void;
}

type Of<K extends SerialField['kind']> = Extract<SerialField, { kind: K }>;

/** The inputs that only this kind of field has; nothing for a kind that is told by its name. */
export function FieldParameters({ field, onChange }: ParametersProps) {
  switch (field.kind) {
    case 'year-letter':
    case 'month-letter':
      return <Letters field={field} onChange={onChange} />;
    case 'plant':
      return <Plant field={field} onChange={onChange} />;
    case 'sequence':
      return <Sequence field={field} onChange={onChange} />;
    case 'other':
      return <Count label="Characters" value={field.length} onCount={(length) => onChange({ ...field, length })} />;
    case 'literal':
      return (
        <TextInput
          label="Characters"
          value={field.text}
          onChange={(event) => onChange({ ...field, text: event.currentTarget.value.toUpperCase() })}
        />
      );
    default:
      return null;
  }
}

function Letters({ field, onChange }: ParametersProps<Of<'year-letter'> | Of<'month-letter'>>) {
  const most = field.kind === 'month-letter' ? 12 : undefined;
  return (
    <>
      <TextInput
        label="Letters left out"
        value={leftOutOf(field.letters)}
        onChange={(event) => onChange({ ...field, letters: lettersWithout(event.currentTarget.value, most) })}
      />
      <TextInput
        label={field.kind === 'month-letter' ? 'January to December' : 'Letters in order'}
        value={field.letters}
        onChange={(event) => onChange({ ...field, letters: event.currentTarget.value.toUpperCase() })}
      />
      {field.kind === 'year-letter' ? (
        <Count
          label="Year of the first letter"
          value={field.firstYear}
          onCount={(firstYear) => onChange({ ...field, firstYear })}
        />
      ) : null}
    </>
  );
}

function Plant({ field, onChange }: ParametersProps<Of<'plant'>>) {
  const [typed, setTyped] = useState(() => field.codes.map(({ code, name }) => `${code} ${name}`.trim()).join(', '));
  const setCodes = (text: string) => {
    setTyped(text);
    const words = text.split(',').map((one) => one.trim());
    const codes = words.filter(Boolean).map((one) => {
      const [code = '', ...name] = one.split(/\s+/);
      return { code: code.toUpperCase(), name: name.join(' ') };
    });
    onChange({ ...field, codes });
  };
  return (
    <>
      <Count label="Characters" value={field.length} onCount={(length) => onChange({ ...field, length })} />
      <TextInput
        label="Codes and names of works"
        description="Such as K Kelder works, L Lund works. Empty: any."
        value={typed}
        onChange={(event) => setCodes(event.currentTarget.value)}
      />
    </>
  );
}

function Sequence({ field, onChange }: ParametersProps<Of<'sequence'>>) {
  const most = (maxLength: number) =>
    onChange(maxLength > field.length ? { ...field, maxLength } : { kind: 'sequence', length: field.length });
  return (
    <>
      <Count label="Digits, at least" value={field.length} onCount={(length) => onChange({ ...field, length })} />
      <Count label="At most" value={field.maxLength ?? field.length} onCount={most} />
    </>
  );
}

function Count({ label, value, onCount }: { label: string; value: number; onCount: (value: number) => void }) {
  const [typed, setTyped] = useState(String(value));
  if (Number(typed) !== value && typed !== '') setTyped(String(value));
  return (
    <TextInput
      label={label}
      inputMode="numeric"
      value={typed}
      onChange={(event) => {
        const text = event.currentTarget.value.replace(/\D/g, '').slice(0, 4);
        setTyped(text);
        if (text !== '') onCount(Number(text));
      }}
      onBlur={() => setTyped(String(value))}
    />
  );
}
