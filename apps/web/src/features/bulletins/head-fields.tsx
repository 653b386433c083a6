import { NativeSelect, Textarea, TextInput } from '@mantine/core';
import { DayField } from '../../components/day-field';
import { SOURCE_KINDS } from '../../../../../libs/contracts';
import { SOURCE_WORDS } from '../../lib/say';
import type { EditorState } from './editor-state';
import classes from './bulletins.module.css';

type Head = EditorState['head'];

/** What stands at the head of the paper. */
export function HeadFields({ head, onChange }: { head: Head; onChange: (head: Head) => void }) {
  const set = (change: Partial<Head>) => onChange({ ...head, ...change });
  const field = (name: 'publisher' | 'number' | 'title', label: string) => (
    <TextInput
      label={label}
      required
      value={head[name]}
      onChange={(event) => set({ [name]: event.currentTarget.value })}
    />
  );
  return (
    <div className={classes.fields}>
      <NativeSelect
        label="Kind of paper"
        value={head.kind}
        onChange={(event) =>
          set({ kind: SOURCE_KINDS.find((kind) => kind === event.currentTarget.value) ?? head.kind })
        }
        data={SOURCE_KINDS.map((value) => ({ value, label: SOURCE_WORDS[value] ?? value }))}
      />
      {field('publisher', 'Who published it')}
      {field('number', 'Number printed on it')}
      {field('title', 'Title')}
      <DayField
        label="Issued"

        required
        value={head.issued}
        onChange={(day) => set({ issued: day })}
      />
      <DayField
        label="In force from"
        description="Empty: from the day it was issued."

        value={head.effective ?? ''}
        onChange={(day) => set({ effective: day || null })}
      />
      <DayField
        label="Received"

        required
        value={head.received}
        onChange={(day) => set({ received: day })}
      />
      <Textarea
        label="What it says, in short"
        className={classes.wide}
        rows={3}
        value={head.summary}
        onChange={(event) => set({ summary: event.currentTarget.value })}
      />
    </div>
  );
}
