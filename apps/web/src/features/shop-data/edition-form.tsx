import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { StandardEditionSchema } from '../../../../../libs/build-date';
import type { SavedStandardEdition, StandardEditionRow } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useSaveEdition } from './shop-data-query';
import classes from './shop-data.module.css';
import { readShape } from '../../../../../libs/shape';

interface EditionFormProps {
  saved: StandardEditionRow | null;
  onSaved: (answer: SavedStandardEdition) => void;
  onLeave: () => void;
}

const DAYS = 'As known: 2014, 2014-08 or 2014-08-14';
const FIELDS = [
  ['standard', 'Standard, without the year', 'Such as ANSI B71.3'],
  ['edition', 'Year it is named after', 'Four digits'],
  ['approved', 'Approved', DAYS],
  ['published', 'Published', DAYS],
  ['subject', 'What it is about', ''],
  ['source', 'Where this is written', 'Needed, so that others can look it up'],
] as const;
type Name = (typeof FIELDS)[number][0];

/** One edition of a standard. No label can name it before it was approved. */
export function EditionForm({ saved, onSaved, onLeave }: EditionFormProps) {
  const [typed, setTyped] = useState<Record<Name, string>>(() => textOf(saved));
  const save = useSaveEdition(saved);
  const read = readShape(StandardEditionSchema, {
    ...typed,
    approved: typed.approved.trim() || null,
    published: typed.published.trim() || null,
  });
  const lacking = typed.standard.trim() === '' || typed.edition.trim() === '' || typed.source.trim() === '';
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (read.ok && !lacking) save.mutate(read.value, { onSuccess: onSaved });
  };
  return (
    <form onSubmit={submit} className={classes.editionForm}>
      <div className={classes.fields}>
        {FIELDS.map(([name, label, description]) => (
          <TextInput
            key={name}
            label={label}
            description={description || undefined}
            value={typed[name]}
            onChange={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
          />
        ))}
      </div>
      {read.ok || lacking ? null : <p role="status">{read.problems[0].words}.</p>}
      <ActProblem error={save.error} />
      <div className={classes.acts}>
        <Button onClick={onLeave}>Leave it</Button>
        <Button type="submit" variant="filled" loading={save.isPending} disabled={!read.ok || lacking}>
          Keep it and date the units again
        </Button>
      </div>
    </form>
  );
}

function textOf(saved: StandardEditionRow | null): Record<Name, string> {
  const { standard = '', edition = '', approved, published, subject = '', source = '' } = saved?.edition ?? {};
  return { standard, edition, approved: approved ?? '', published: published ?? '', subject, source };
}
