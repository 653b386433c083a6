import { TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { MoveForm } from '../../features/shelf/move-form';
import { PullsList } from '../../features/shelf/pulls-list';
import { ShelfList } from '../../features/shelf/shelf-list';
import { ONLY } from '../../features/shelf/shelf-query';
import classes from '../../features/shelf/shelf.module.css';
import { useMay } from '../../lib/session';

const route = getRouteApi('/shelf');
const TABS = [
  { only: undefined, words: 'Everything' },
  { only: 'low', words: 'Time to order' },
  { only: 'reserved', words: 'Reserved' },
  { only: 'pull', words: 'Bulletins' },
] as const;

/** What lies where, how much of it is free, and what is to be done about it. */
export function ShelfPage() {
  const given = route.useSearch();
  const only = ONLY.find((one) => one === given.only);
  const [typed, setTyped] = useState(given.q ?? '');
  const [q] = useDebouncedValue(typed.trim(), 250);
  const mayMove = useMay('move-stock');
  return (
    <>
      <h1>Shelf</h1>
      {mayMove ? <MoveForm /> : null}
      <PullsList />
      <div className={classes.search}>
        <TextInput
          label="Find a part"
          description="Its number in any writing, its name, or a bin"
          type="search"
          value={typed}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <Link to="/shelf/orders" className={classes.tab}>
          What to order
        </Link>
      </div>
      <nav aria-label="Parts on the shelf" className={classes.tabs}>
        {TABS.map(({ only: one, words }) => (
          <Link
            key={words}
            to="/shelf"
            search={{ only: one, q: undefined }}
            className={classes.tab}
            aria-current={one === only ? 'page' : undefined}
          >
            {words}
          </Link>
        ))}
      </nav>
      <ShelfList q={q} only={only} />
    </>
  );
}
