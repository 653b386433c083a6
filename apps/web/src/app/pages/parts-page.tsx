import { TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { PartRow } from '../../features/parts/part-row';
import classes from '../../features/parts/parts.module.css';
import { partsQuery } from '../../lib/catalogue-queries';
import { useMay } from '../../lib/session';

const route = getRouteApi('/shop/parts');

/** The parts of the catalogue with the bar codes of their bags: a scan then leads to the part. */
export function PartsPage() {
  const { code = '' } = route.useSearch();
  const [typed, setTyped] = useState('');
  const [q] = useDebouncedValue(typed.trim(), 250);
  const found = useQuery(partsQuery(q));
  const may = useMay('number-bags');
  const [writtenOn, setWrittenOn] = useState<string | null>(null);
  const mayBring = useMay('bring-in');
  return (
    <>
      <h1>Parts and their bar codes</h1>
      {code && may ? (
        <p role="status">
          <span className="num">{code}</span>{' '}
          {writtenOn === null
            ? 'leads to no part yet: find the part it is on, and write it down there.'
            : `is written down: it leads to ${writtenOn} now.`}
        </p>
      ) : (
        <p className="soft">A bag that is scanned leads to its part once the digits under its bar code stand here.</p>
      )}
      {mayBring ? (
        <p>
          <Link to="/shop/in-and-out">Many at once come in with the spreadsheet of parts.</Link>
        </p>
      ) : null}
      <TextInput
        label="Part"
        description="A number in any writing, a bar code, or a word of its name"
        value={typed}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      {q.length < 2 ? null : (
        <QueryView query={found} what="the parts">
          {(parts) =>
            parts.length === 0 ? (
              <EmptyView title="No part of the catalogue fits" />
            ) : (
              <ul className={classes.list}>
                {parts.map((part) => (
                  <PartRow
                    key={part.id}
                    part={part}
                    may={may}
                    offered={writtenOn === null ? code : ''}
                    onWritten={(number) => setWrittenOn(number)}
                  />
                ))}
              </ul>
            )
          }
        </QueryView>
      )}
    </>
  );
}
