import { Button } from '@mantine/core';
import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ShelfItem } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { FailedView } from '../../components/failed-view';
import { LoadingView } from '../../components/loading-view';
import { PartNumber } from '../../components/part-number';
import { count, sayDayText } from '../../lib/say';
import { shelfQuery, type Only } from './shelf-query';
import classes from './shelf.module.css';

/** What lies on the shelf, in the order in which one walks along it. */
export function ShelfList({ q, only }: { q: string; only: Only | undefined }) {
  const pages = useInfiniteQuery(shelfQuery(q, only));
  if (pages.isPending) return <LoadingView what="the shelf" />;
  if (pages.isError) return <FailedView what="the shelf" error={pages.error} retry={() => void pages.refetch()} />;
  const first = pages.data.pages[0];
  const items = pages.data.pages.flatMap((page) => page.items);
  if (items.length === 0) {
    return q === '' && only === undefined ? (
      <EmptyView title="The shelf is empty">
        <p>Receive or count the first part; from then on it stands here with its bin.</p>
      </EmptyView>
    ) : (
      <EmptyView title="Nothing of that kind lies on the shelf" />
    );
  }
  return (
    <>
      <p role="status">
        {count(first?.total ?? items.length, 'part')}
        {first?.kept === false
          ? '; picking takes nothing from here, since the shop keeps no shelf (Shop, Settings)'
          : ''}
      </p>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">Bin</th>
            <th scope="col">Part</th>
            <th scope="col">On hand</th>
            <th scope="col">Reserved</th>
            <th scope="col">Free</th>
            <th scope="col">Order at</th>
          </tr>
        </thead>
        <tbody>
          {items.map((item) => (
            <ItemRow key={item.id} item={item} />
          ))}
        </tbody>
      </table>
      {pages.hasNextPage ? (
        <Button onClick={() => void pages.fetchNextPage()} loading={pages.isFetchingNextPage}>
          Show more
        </Button>
      ) : null}
    </>
  );
}

function ItemRow({ item }: { item: ShelfItem }) {
  const { id, part, bin, onHand, reserved, free, reorderPoint } = item;
  return (
    <tr>
      <td className={classes.bin} data-label="Bin">
        {bin === '' ? '–' : bin}
      </td>
      <th scope="row" className={classes.partCell}>
        <Link to="/shelf/items/$id" params={{ id }} className={classes.link}>
          <PartNumber number={part.number} name={part.name} />
        </Link>
        <Remarks item={item} />
      </th>
      <td className={classes.figure} data-label="On hand">
        {onHand}
      </td>
      <td className={classes.figure} data-label="Reserved">
        {reserved}
      </td>
      <td className={classes.figure} data-label="Free">
        <strong>{free}</strong>
      </td>
      <td className={classes.figure} data-label="Order at">
        {reorderPoint ?? '–'}
      </td>
    </tr>
  );
}

/** What one has to know about the item, each in a few words. */
function Remarks({ item: { toPull, coming, expectedOn, waiting, reorderPoint, free } }: { item: ShelfItem }) {
  const words = [
    toPull > 0 ? 'a bulletin speaks against it' : null,
    waiting > 0 ? count(waiting, 'ticket waits', 'tickets wait') : null,
    coming > 0 ? `${coming} on the way${expectedOn ? ` for ${sayDayText(expectedOn)}` : ''}` : null,
    reorderPoint !== null && free + coming <= reorderPoint ? 'time to order' : null,
  ].filter((one) => one !== null);
  if (words.length === 0) return null;
  return <span className={toPull > 0 ? classes.warn : classes.remark}>{words.join('; ')}</span>;
}
