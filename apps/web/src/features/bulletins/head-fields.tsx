import { NativeSelect, Textarea, TextInput } from '@mantine/core';
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
      <TextInput
        label="Issued"
        type="date"
        required
        value={head.issued}
        onChange={(event) => set({ issued: event.currentTarget.value })}
      />
      <TextInput
        label="In force from"
        description="Empty: from the day it was issued."
        type="date"
        value={head.effective ?? ''}
        onChange={(event) => set({ effective: event.currentTarget.value || null })}
      />
      <TextInput
        label="Received"
        type="date"
        required
        value={head.received}
        onChange={(event) => set({ received: event.currentTarget.value })}
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
