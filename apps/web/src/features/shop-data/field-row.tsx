import { Button, NativeSelect } from '@mantine/core';
import type { SerialField } from '../../../../../libs/build-date';
import { FIELD_WORDS, groupOf, newField, type FieldKind } from './field-words';
import { FieldParameters } from './field-parameters';
import classes from './shop-data.module.css';

interface FieldRowProps {
  field: SerialField;
  /** where it stands, in words */
  place: string;
  number: number;
  onChange: (field: SerialField) => void;
  /** null for the first row */
  onUp: (() => void) | null;
  onRemove: (() => void) | null;
}

/** One field of a scheme, left to right: what it is, where it stands, and what only that kind has. */
export function FieldRow({ field, place, number, onChange, onUp, onRemove }: FieldRowProps) {
  return (
    <li className={classes.field} data-group={groupOf(field.kind)}>
      <NativeSelect
        label={`Field ${number}`}
        description={place}
        value={field.kind}
        onChange={(event) => onChange(newField(event.currentTarget.value as FieldKind))}
        data={Object.entries(FIELD_WORDS).map(([value, label]) => ({ value, label }))}
      />
      <div className={classes.parameters}>
        <FieldParameters field={field} onChange={onChange} />
      </div>
      <div className={classes.rowActs}>
        <Button
          variant="subtle"
          px="xs"
          disabled={!onUp}
          onClick={onUp ?? undefined}
          aria-label={`Field ${number} one place up`}
        >
          Up
        </Button>
        <Button
          variant="subtle"
          px="xs"
          disabled={!onRemove}
          onClick={onRemove ?? undefined}
          aria-label={`Take field ${number} out`}
        >
          Take out
        </Button>
      </div>
    </li>
  );
}
