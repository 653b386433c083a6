import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Navigate } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { SearchHitsList } from '../../features/search/search-hits-list';
import { onlyByNumber } from '../../features/search/only-by-number';
import { searchQuery } from '../../features/search/search-query';

const route = getRouteApi('/search');

/** What the search field found; the number of one ticket, as a scanned tag gives it, leads straight to that ticket. */
export function SearchPage() {
  const { q = '' } = route.useSearch();
  const hits = useQuery(searchQuery(q));
  const id = onlyByNumber(q, hits.data ?? []);
  if (id !== null) return <Navigate to="/tickets/$id" params={{ id }} replace />;
  return (
    <>
      <h1>Found for “{q}”</h1>
      {q === '' ? (
        <EmptyView title="Write what you look for in the field above" />
      ) : (
        <QueryView query={hits} what="what was found">
          {(found) =>
            found.length === 0 ? (
              <EmptyView title="No ticket found">
                <p>A tag, a serial number, an owner, a phone number or a part number leads to a ticket.</p>
              </EmptyView>
            ) : (
              <SearchHitsList hits={found} />
            )
          }
        </QueryView>
      )}
    </>
  );
}
