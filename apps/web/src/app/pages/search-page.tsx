import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { SearchHitsList } from '../../features/search/search-hits-list';
import { searchQuery } from '../../features/search/search-query';

const route = getRouteApi('/search');

/** What the search field found. */
export function SearchPage() {
  const { q = '' } = route.useSearch();
  const hits = useQuery(searchQuery(q));
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
