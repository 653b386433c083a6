import { Button, Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { SerialField } from '../../../../../libs/build-date';
import type { LineSummary, SavedSerialScheme, SerialSchemeRow } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { DayField } from '../../components/day-field';
import { FieldRow } from './field-row';
import { newField, placesOf } from './field-words';
import { SchemeTrial } from './scheme-trial';
import { useSaveScheme } from './shop-data-query';
import { checked, wireFrom, type TypedScheme } from './typed-scheme';
import classes from './shop-data.module.css';

interface SchemeFormProps {
  /** null for a new scheme */
  saved: SerialSchemeRow | null;
  first: TypedScheme;
  lines: readonly LineSummary[];
  schemes: readonly SerialSchemeRow[];
  mayEdit: boolean;
  onSaved: (answer: SavedSerialScheme) => void;
}

/** How a maker wrote serials in one stretch of time: a row per field, and a serial to try it on. */
export function SchemeForm({ saved, first, lines, schemes, mayEdit, onSaved }: SchemeFormProps) {
  const [typed, setTyped] = useState(first);
  const set = (change: Partial<TypedScheme>) => setTyped({ ...typed, ...change });
  const save = useSaveScheme(saved);
  const { scheme, problems } = checked(typed);
  const others = schemes.filter((one) => one.id !== saved?.id && one.scheme.maker === typed.maker);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(wireFrom(typed), { onSuccess: onSaved });
  };
  return (
    <form onSubmit={submit}>
      <fieldset disabled={!mayEdit} className={classes.bare}>
        <HeadFields typed={typed} set={set} lines={lines} fixedMaker={saved !== null} />
        <h2 className={classes.next}>Fields, from left to right</h2>
        <FieldRows fields={typed.fields} onChange={(fields) => set({ fields })} />
      </fieldset>
      <SchemeTrial scheme={scheme} problems={problems} others={others.map((one) => one.scheme)} />
      <ActProblem error={save.error} />
      {mayEdit ? (
        <Button
          type="submit"
          variant="filled"
          loading={save.isPending}
          disabled={!scheme || typed.maker === '' || typed.name.trim() === ''}
          className={classes.keep}
        >
          Keep it and date the units again
        </Button>
      ) : (
        <p className="soft">A manager or administrator can change it.</p>
      )}
    </form>
  );
}

interface HeadProps {
  typed: TypedScheme;
  set: (change: Partial<TypedScheme>) => void;
  lines: readonly LineSummary[];
  fixedMaker: boolean;
}

function HeadFields({ typed, set, lines, fixedMaker }: HeadProps) {
  const makers = [...new Map(lines.map(({ maker }) => [maker.code, maker.name]))];
  return (
    <div className={classes.fields}>
      <NativeSelect
        label="Maker"
        disabled={fixedMaker}
        value={typed.maker}
        onChange={(event) => set({ maker: event.currentTarget.value, lines: [] })}
      >
        <option value="">Pick the maker</option>
        {makers.map(([code, name]) => (
          <option key={code} value={code}>
            {name}
          </option>
        ))}
      </NativeSelect>
      <TextInput
        label="Name"
        description="Such as two-digit year, month letter"
        value={typed.name}
        onChange={(event) => set({ name: event.currentTarget.value })}
      />
      <DayField
        label="Used from (first build day)"
        description="Empty: not known"
        value={typed.firstDay}
        onChange={(firstDay) => set({ firstDay })}
      />
      <DayField
        label="Used until (last build day)"
        description="Empty: still used, or not known"
        value={typed.lastDay}
        onChange={(lastDay) => set({ lastDay })}
      />
      <TextInput
        label="Paper that says so"
        description="Empty: common practice, no source"
        className={classes.wide}
        value={typed.source}
        onChange={(event) => set({ source: event.currentTarget.value })}
      />
      <LineTicks typed={typed} set={set} lines={lines} />
    </div>
  );
}

function LineTicks({ typed, set, lines }: Omit<HeadProps, 'fixedMaker'>) {
  const ofMaker = lines.filter(({ maker }) => maker.code === typed.maker);
  if (ofMaker.length < 2) return null;
  const tick = (code: string, on: boolean) =>
    set({ lines: on ? [...typed.lines, code] : typed.lines.filter((one) => one !== code) });
  return (
    <fieldset className={classes.ticks}>
      <legend>Lines it was used on (none ticked: every line)</legend>
      {ofMaker.map(({ code, name }) => (
        <Checkbox
          key={code}
          label={name}
          checked={typed.lines.includes(code)}
          onChange={(event) => tick(code, event.currentTarget.checked)}
        />
      ))}
    </fieldset>
  );
}

function FieldRows({ fields, onChange }: { fields: SerialField[]; onChange: (fields: SerialField[]) => void }) {
  const places = placesOf(fields);
  const swapped = (at: number) =>
    fields.map((field, index) => (index === at - 1 ? fields[at]! : index === at ? fields[at - 1]! : field));
  return (
    <>
      <ol className={classes.rows}>
        {fields.map((field, at) => (
          <FieldRow
            // The rows have no identity but their place and kind.
            key={`${at}-${field.kind}`}
            field={field}
            place={places[at]!}
            number={at + 1}
            onChange={(changed) => onChange(fields.map((old, index) => (index === at ? changed : old)))}
            onUp={at === 0 ? null : () => onChange(swapped(at))}
            onRemove={fields.length === 1 ? null : () => onChange(fields.filter((_, index) => index !== at))}
          />
        ))}
      </ol>
      <Button disabled={fields.length >= 20} onClick={() => onChange([...fields, newField('sequence')])}>
        Add a field
      </Button>
    </>
  );
}
