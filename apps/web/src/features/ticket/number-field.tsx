import { TextInput } from '@mantine/core';
import { useEffect, useRef, type KeyboardEvent } from 'react';
import { useDraftOver } from '../../lib/draft';
import classes from './place-entry.module.css';

interface NumberFieldProps {
  label: string;
  /** the number that is on record */
  kept: string;
  /** where it is kept on the device until the server has it */
  draft: string;
  onKeep: (text: string) => void;
}

/**
 * A field for a typed or scanned number: leaving it keeps it, Enter leaves it for the next one. What could not be sent
 * stays on the device, also through a reload, and is sent when the line is back.
 */
export function NumberField({ label, kept, draft, onKeep }: NumberFieldProps) {
  const [text, setText] = useDraftOver(draft, kept);
  const field = useRef<HTMLInputElement>(null);
  const unsent = text.trim() !== kept;
  useEffect(() => {
    if (!unsent) return;
    // Whoever still types in the field sends it by leaving it.
    const send = () => {
      if (document.activeElement !== field.current) onKeep(text);
    };
    window.addEventListener('online', send);
    return () => window.removeEventListener('online', send);
  });
  const keep = () => {
    if (unsent) onKeep(text);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    focusNext(event.currentTarget);
  };
  return (
    <TextInput
      ref={field}
      aria-label={label}
      placeholder="Part number"
      data-place-field
      className={classes.number}
      value={text}
      autoComplete="off"
      autoCapitalize="characters"
      spellCheck={false}
      onChange={(event) => setText(event.currentTarget.value)}
      onKeyDown={onKeyDown}
      onBlur={keep}
    />
  );
}

/**
 * The next place in the order of the page that can be seen; after the last one its row, where a further scan writes
 * nothing. A field in a folded part takes no focus, and a field that nobody leaves would not be kept.
 */
function focusNext(field: HTMLInputElement): void {
  const all = [...document.querySelectorAll<HTMLInputElement>('[data-place-field]')];
  const next = all.slice(all.indexOf(field) + 1).find((one) => one.checkVisibility());
  if (!next) return leave(field);
  next.focus({ preventScroll: true });
  // In the middle: the verdict of the place before is yet to come, and pushes what stands under it down.
  next.scrollIntoView({ block: 'center' });
}

function leave(field: HTMLInputElement): void {
  const row = field.closest('li');
  if (!row) return field.blur();
  row.tabIndex = -1;
  row.focus({ preventScroll: true });
}
