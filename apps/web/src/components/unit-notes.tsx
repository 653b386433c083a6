import { Button } from '@mantine/core';
import { useState } from 'react';
import type { UnitNoteView } from '../../../../libs/contracts';
import { sayDayText } from '../lib/say';
import { useMay } from '../lib/session';
import { ReasonDialog } from './reason-dialog';
import { Said } from './said';
import classes from './unit-notes.module.css';

interface UnitNotesProps {
  notes: readonly UnitNoteView[];
  /** `Noted for this visit:` */
  words: string;
  busy: boolean;
  error: unknown;
  /** null where nothing can be settled now */
  onSettle: ((noteId: number, reason: string, done: () => void) => void) | null;
}

/** Notes that waited for the unit's visit, each with the way to settle it by hand. */
export function UnitNotes({ notes, words, busy, error, onSettle }: UnitNotesProps) {
  const may = useMay('settle-notes');
  const [settling, setSettling] = useState<number | null>(null);
  const close = () => setSettling(null);
  const asked = notes.find(({ id }) => id === settling);
  return (
    <>
      {notes.map(({ id, where, sentence, source, on }) => (
        <div key={id} className={classes.note}>
          <p>
            <strong>{`${words} ${where}.`}</strong> <Said>{sentence}</Said>{' '}
            <span className="soft">{`${source}, ${sayDayText(on)}`}</span>
          </p>
          {may && onSettle ? (
            <Button aria-label={`Settle the note about ${where}`} onClick={() => setSettling(id)}>
              Settle it
            </Button>
          ) : null}
        </div>
      ))}
      <ReasonDialog
        key={settling}
        title="Settle the note"
        act="Settle it"
        label="What was done about it"
        open={asked !== undefined}
        busy={busy}
        error={error}
        onClose={close}
        onReason={(reason) => (settling === null ? undefined : onSettle?.(settling, reason, close))}
      >
        <p>
          <strong>{asked?.where}.</strong> <Said>{asked?.sentence ?? ''}</Said>
        </p>
        <p className="soft">It does not come up again while the same part stays in its place.</p>
      </ReasonDialog>
    </>
  );
}
