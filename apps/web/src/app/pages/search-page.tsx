import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link, Navigate } from '@tanstack/react-router';
import type { ScanAnswer } from '../../../../../libs/contracts';
import { tradeNumbersIn, writeTradeNumber } from '../../../../../libs/part-number';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { OwnerHits } from '../../features/search/owner-hits';
import { SearchHitsList } from '../../features/search/search-hits-list';
import { onlyByNumber } from '../../features/search/only-by-number';
import { searchQuery } from '../../features/search/search-query';
import { scanQuery } from '../../lib/scan-query';
import { useMay } from '../../lib/session';

const route = getRouteApi('/search');

/** What the search field found; the number of one ticket, as a scanned tag gives it, leads straight to that ticket. */
export function SearchPage() {
  const { q = '' } = route.useSearch();
  const scan = useQuery(scanQuery(q));
  const maySeeOwners = useMay('manage-personal-data');
  const isText = scan.data?.kind === 'text';
  const hits = useQuery({ ...searchQuery(q), enabled: isText });
  const id = onlyByNumber(q, hits.data ?? []);
  if (id !== null) return <Navigate to="/tickets/$id" params={{ id }} replace />;
  if (q !== '' && !isText)
    return (
      <QueryView query={scan} what="what was found">
        {(found) => <Scanned q={q} found={found} />}
      </QueryView>
    );
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
      {isText && maySeeOwners ? <OwnerHits q={q} /> : null}
    </>
  );
}

/** A code leads straight to what it is on; one that leads nowhere says why. */
function Scanned({ q, found }: { q: string; found: ScanAnswer }) {
  const mayNumber = useMay('number-bags');
  if (found.kind === 'ticket') return <Navigate to="/tickets/$id" params={{ id: found.id }} replace />;
  if (found.kind === 'unit') return <Navigate to="/units/$id" params={{ id: found.id }} replace />;
  if (found.kind === 'part') return <ScannedPart found={found} />;
  const [tradeNumber] = tradeNumbersIn(q);
  return (
    <>
      <h1>Found for “{q}”</h1>
      <EmptyView title={found.kind === 'unknown' ? found.sentence : 'Nothing found'}>
        {tradeNumber === undefined || !mayNumber ? null : (
          <p>
            <Link to="/shop/parts" search={{ code: writeTradeNumber(tradeNumber) }}>
              Write down which part it is on
            </Link>
          </p>
        )}
      </EmptyView>
    </>
  );
}

/** A part by its bag: what it is, where it lies, and which tickets hold it. */
function ScannedPart({ found: { part, pack, batch } }: { found: Extract<ScanAnswer, { kind: 'part' }> }) {
  const hits = useQuery(searchQuery(part.number));
  const bag = [pack > 1 ? `a bag of ${pack}` : '', batch === null ? '' : `batch ${batch}`].filter(Boolean).join(', ');
  return (
    <>
      <h1>
        <span className="num">{part.number}</span> {part.name}
      </h1>
      {bag ? <p>{bag}</p> : null}
      <p>
        <Link to="/shelf" search={{ q: part.number }}>
          On the shelf
        </Link>
        {' · '}
        <Link to="/rulebook" search={{ q: part.number }}>
          What the rulebook says of it
        </Link>
      </p>
      <h2>Tickets that hold it</h2>
      <QueryView query={hits} what="the tickets">
        {(list) => (list.length === 0 ? <p className="soft">None.</p> : <SearchHitsList hits={list} />)}
      </QueryView>
    </>
  );
}
