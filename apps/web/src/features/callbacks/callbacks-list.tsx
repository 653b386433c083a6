import { Button } from '@mantine/core';
import { useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { MOST_AT_ONCE } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { FailedView } from '../../components/failed-view';
import { LoadingView } from '../../components/loading-view';
import { count } from '../../lib/say';
import { CallbackCard } from './callback-card';
import { WriteBar } from './write-bar';
import { callbacksQuery, type CallbackState } from './callbacks-query';

/** The callbacks of one state, more of them on demand. */
export function CallbacksList({ state }: { state: CallbackState }) {
  const pages = useInfiniteQuery(callbacksQuery(state));
  const [chosen, setChosen] = useState<ReadonlySet<number>>(new Set());
  if (pages.isPending) return <LoadingView what="the callbacks" />;
  if (pages.isError) {
    return <FailedView what="the callbacks" error={pages.error} retry={() => void pages.refetch()} />;
  }
  const first = pages.data.pages[0];
  const items = pages.data.pages.flatMap((page) => page.items);
  if (items.length === 0) {
    return (
      <EmptyView title="No callback here">
        <p>When a bulletin changes the answer for a unit already handed over, its owner turns up here.</p>
      </EmptyView>
    );
  }
  return (
    <>
      <p role="status">
        {count(first?.total ?? items.length, 'owner', 'owners')}
        {first && first.urgent > 0 ? `, ${first.urgent} urgent` : ''}
      </p>
      <WriteBar
        state={state}
        chosen={items.filter(({ id }) => chosen.has(id)).map(({ id }) => id)}
        onAll={() => setChosen(new Set(items.slice(0, MOST_AT_ONCE).map(({ id }) => id)))}
        onDone={() => setChosen(new Set())}
      />
      <ul>
        {items.map((callback) => (
          <CallbackCard
            key={callback.id}
            callback={callback}
            chosen={chosen.has(callback.id)}
            onChoose={(on) => setChosen(on ? new Set([...chosen, callback.id]) : without(chosen, callback.id))}
          />
        ))}
      </ul>
      {pages.hasNextPage ? (
        <Button onClick={() => void pages.fetchNextPage()} loading={pages.isFetchingNextPage}>
          Show more
        </Button>
      ) : null}
    </>
  );
}

const without = (ids: ReadonlySet<number>, id: number): ReadonlySet<number> =>
  new Set([...ids].filter((one) => one !== id));
