import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { BenchColumns } from '../../features/benches/bench-columns';
import { benchListsQuery } from '../../features/benches/bench-lists-query';
import { useMay } from '../../lib/session';

/** Who has how much on the bench, and what comes next on each. */
export function BenchesPage() {
  const lists = useQuery(benchListsQuery);
  const may = useMay('plan-benches');
  return (
    <>
      <h1>Benches</h1>
      <p>
        {may ? 'Drag a ticket, or move it by its buttons. ' : ''}
        <Link to="/my-bench">My bench</Link>
      </p>
      <QueryView query={lists} what="the benches">
        {(data) =>
          data.benches.length === 0 ? <EmptyView title="No bench at this location" /> : <BenchColumns lists={data} />
        }
      </QueryView>
    </>
  );
}
