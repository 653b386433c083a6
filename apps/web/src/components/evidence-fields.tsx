import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import {
  editionValue,
  EVIDENCE_FORMS,
  evidenceOf,
  evidenceWords,
  missingField,
  type EvidenceField,
  type Typed,
} from '../lib/evidence-words';
import { editionsQuery } from '../lib/shop-data-queries';
import { DayField } from './day-field';
import { PartialDateField } from './partial-date-field';
import classes from './evidence-fields.module.css';

interface EvidenceFieldsProps {
  onAdd: (evidence: { kind: string } & Record<string, string | null>) => void;
  busy?: boolean;
}

/** One piece of evidence: its kind, and the fields that kind has. Enter adds it. */
export function EvidenceFields({ onAdd, busy = false }: EvidenceFieldsProps) {
  const [kind, setKind] = useState('printed-date');
  const [typed, setTyped] = useState<Typed>({});
  const missing = missingField(kind, typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (missing) return;
    onAdd(evidenceOf(kind, typed));
    setTyped({});
  };
  const pick = (next: string) => {
    setKind(next);
    setTyped({});
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <NativeSelect label="What was read" value={kind} onChange={(event) => pick(event.currentTarget.value)}>
        {Object.keys(EVIDENCE_FORMS).map((one) => (
          <option key={one} value={one}>
            {evidenceWords(one)}
          </option>
        ))}
      </NativeSelect>
      {(EVIDENCE_FORMS[kind] ?? []).map((field) => (
        <OneField
          key={`${kind}-${field.name}`}
          field={field}
          value={typed[field.name] ?? ''}
          onChange={(value) => setTyped({ ...typed, [field.name]: value })}
        />
      ))}
      <Button type="submit" disabled={missing !== null} loading={busy} className={classes.add}>
        Add what was read
      </Button>
    </form>
  );
}

interface OneFieldProps {
  field: EvidenceField;
  value: string;
  onChange: (value: string) => void;
}

function OneField({ field: { input, label, hint, choices }, value, onChange }: OneFieldProps) {
  if (input === 'date') return <PartialDateField label={label} value={value} onChange={onChange} />;
  if (input === 'day') return <DayField label={label} value={value} onChange={onChange} />;
  if (input === 'edition') return <EditionField label={label} value={value} onChange={onChange} />;
  if (input === 'choice') {
    return (
      <NativeSelect
        label={label}
        value={value || choices?.[0]?.[0]}
        onChange={(event) => onChange(event.currentTarget.value)}
        data={(choices ?? []).map(([one, words]) => ({ value: one, label: words }))}
      />
    );
  }
  return (
    <TextInput
      label={label}
      description={hint}
      className={classes.field}
      value={value}
      autoCapitalize="characters"
      spellCheck={false}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}

/** The shop's list: an edition that is not on it says nothing of a date until somebody enters its day. */
function EditionField({ label, value, onChange }: { label: string; value: string; onChange: (value: string) => void }) {
  const editions = useQuery(editionsQuery).data ?? [];
  return (
    <NativeSelect
      label={label}
      description="Not on the list? A manager adds it under Shop."
      value={value}
      onChange={(event) => onChange(event.currentTarget.value)}
    >
      <option value="">Pick what the plate names</option>
      {editions.map(({ id, edition: { standard, edition, subject } }) => (
        <option key={id} value={editionValue(standard, edition)}>
          {`${standard}-${edition}${subject ? `, ${subject}` : ''}`}
        </option>
      ))}
    </NativeSelect>
  );
}
