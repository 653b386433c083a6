import { Button } from '@mantine/core';
import { useInfiniteQuery } from '@tanstack/react-query';
import { Fragment, useEffect, useMemo, useRef, useState, type FocusEvent } from 'react';
import { MOST_AT_ONCE, type CallbackView } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { FailedView } from '../../components/failed-view';
import { LoadingView } from '../../components/loading-view';
import { useHotkeys } from '../../lib/hotkeys';
import { count, sayDayText, todayText } from '../../lib/say';
import { CallbackCard } from './callback-card';
import { WriteBar } from './write-bar';
import { callbacksQuery, type CallbackState } from './callbacks-query';
import classes from './callbacks.module.css';

/** The callbacks of one state, more of them on demand. */
export function CallbacksList({ state }: { state: CallbackState }) {
  const pages = useInfiniteQuery(callbacksQuery(state));
  useHotkeys(useMemo(() => ({ j: () => goToCard(1), k: () => goToCard(-1) }), []));
  const [chosen, setChosen] = useState<ReadonlySet<number>>(new Set());
  const noteCard = useNextCard(pages.data?.pages.flatMap(({ items }) => items.map(({ id }) => id)) ?? []);
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
      <ul onFocus={noteCard}>
        {items.map((callback, index) => (
          <Fragment key={callback.id}>
            <DayHeading callback={callback} before={items[index - 1]} />
            <CallbackCard
              callback={callback}
              chosen={chosen.has(callback.id)}
              onChoose={(on) => setChosen(on ? new Set([...chosen, callback.id]) : without(chosen, callback.id))}
            />
          </Fragment>
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

/** The day for which owners are put off, once above all of that day; what is urgent stands before every day. */
function DayHeading({ callback, before }: { callback: CallbackView; before: CallbackView | undefined }) {
  const heading = headingOf(callback);
  if (heading === null || (before && headingOf(before) === heading)) return null;
  return (
    <li className={classes.day}>
      <h2>{heading}</h2>
    </li>
  );
}

function headingOf({ urgent, nextOn, state }: CallbackView): string | null {
  if (state !== 'open' || nextOn === null || nextOn <= todayText()) return null;
  return `${urgent ? 'Stop use, next try' : 'Next try'} ${sayDayText(nextOn)}`;
}

/**
 * Whoever has done with an owner, who then leaves the list, is at the one that moves up, or at the last. Answers what
 * is to hear of each focus in the list.
 */
function useNextCard(ids: readonly number[]): (event: FocusEvent) => void {
  const here = useRef<{ id: number; at: number } | null>(null);
  useEffect(() => {
    if (here.current === null || ids.includes(here.current.id)) return;
    const next = ids[Math.min(here.current.at, ids.length - 1)];
    here.current = null;
    if (next === undefined || document.activeElement !== document.body) return;
    document.querySelector<HTMLElement>(`[data-callback="${next}"]`)?.focus();
  });
  return ({ target }) => {
    const card = target.closest('[data-callback]');
    const id = Number(card?.getAttribute('data-callback'));
    if (card) here.current = { id, at: ids.indexOf(id) };
  };
}

/** The card after or before the one where one is; the first where one is at none. */
function goToCard(by: 1 | -1): void {
  const cards = [...document.querySelectorAll<HTMLElement>('[data-callback]')];
  const here = cards.findIndex((card) => card.contains(document.activeElement));
  cards[here === -1 ? 0 : here + by]?.focus();
}
