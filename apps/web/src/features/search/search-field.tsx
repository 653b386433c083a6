import { TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useMemo, useRef, type FormEvent } from 'react';
import { useHotkeys } from '../../lib/hotkeys';
import classes from './search-field.module.css';

/** Search from anywhere; `/` leads into it, a scanner's Enter sends it. */
export function SearchField() {
  const field = useRef<HTMLInputElement>(null);
  const navigate = useNavigate();
  useHotkeys(useMemo(() => ({ '/': () => field.current?.focus() }), []));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const q = field.current?.value.trim() ?? '';
    if (q !== '') void navigate({ to: '/search', search: { q } });
  };
  return (
    <form role="search" onSubmit={submit} className={classes.search}>
      <TextInput
        ref={field}
        type="search"
        aria-label="Search by tag, serial, owner, phone or part"
        placeholder="Tag, serial, owner, part"
      />
    </form>
  );
}
