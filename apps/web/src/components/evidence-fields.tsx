import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { EVIDENCE_FORMS, evidenceOf, evidenceWords, missingField } from '../lib/evidence-words';
import classes from './evidence-fields.module.css';

interface EvidenceFieldsProps {
  onAdd: (evidence: { kind: string } & Record<string, string | null>) => void;
  busy?: boolean;
}

/** One piece of evidence: its kind, and the fields that kind has. Enter adds it. */
export function EvidenceFields({ onAdd, busy = false }: EvidenceFieldsProps) {
  const [kind, setKind] = useState('printed-date');
  const [typed, setTyped] = useState<Record<string, string>>({});
  const missing = missingField(kind, typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (missing) return;
    onAdd(evidenceOf(kind, typed));
    setTyped({});
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <NativeSelect label="What was read" value={kind} onChange={(event) => setKind(event.currentTarget.value)}>
        {Object.keys(EVIDENCE_FORMS).map((one) => (
          <option key={one} value={one}>
            {evidenceWords(one)}
          </option>
        ))}
      </NativeSelect>
      {(EVIDENCE_FORMS[kind] ?? []).map(({ name, label, hint }) => (
        <TextInput
          key={`${kind}-${name}`}
          label={label}
          description={hint}
          className={classes.field}
          value={typed[name] ?? ''}
          onChange={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
        />
      ))}
      <Button type="submit" disabled={missing !== null} loading={busy} className={classes.add}>
        Add what was read
      </Button>
    </form>
  );
}
