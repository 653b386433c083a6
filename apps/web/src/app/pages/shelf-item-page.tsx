import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { ItemView } from '../../features/shelf/item-view';
import { shelfItemQuery } from '../../features/shelf/shelf-query';

const route = getRouteApi('/shelf/items/$id');

/** One part on the shelf with its movements. */
export function ShelfItemPage() {
  const { id } = route.useParams();
  const item = useQuery(shelfItemQuery(id));
  return (
    <QueryView query={item} what="the part">
      {(data) => (
        <>
          <p>
            <Link to="/shelf">The whole shelf</Link>
          </p>
          <h1>
            <span className="num">{data.part.number}</span> {data.part.name}
          </h1>
          <ItemView item={data} />
        </>
      )}
    </QueryView>
  );
}
