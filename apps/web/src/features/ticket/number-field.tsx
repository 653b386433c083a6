import { TextInput } from '@mantine/core';
import { useState, type KeyboardEvent } from 'react';
import classes from './place-entry.module.css';

interface NumberFieldProps {
  label: string;
  /** the number that is on record */
  kept: string;
  onKeep: (text: string) => void;
}

/** A field for a typed or scanned number: leaving it keeps it, Enter leaves it for the next one. */
export function NumberField({ label, kept, onKeep }: NumberFieldProps) {
  const [text, setText] = useState(kept);
  const keep = () => {
    if (text.trim() !== kept) onKeep(text);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    focusNext(event.currentTarget);
  };
  return (
    <TextInput
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
 * The next place in the order of the page that can be seen; after the last one the field just lets go. A field in a
 * folded part takes no focus, and a field that nobody leaves would not be kept.
 */
function focusNext(field: HTMLInputElement): void {
  const all = [...document.querySelectorAll<HTMLInputElement>('[data-place-field]')];
  const next = all.slice(all.indexOf(field) + 1).find((one) => one.checkVisibility());
  if (next) next.focus();
  else field.blur();
}
