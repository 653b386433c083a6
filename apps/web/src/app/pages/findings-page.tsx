import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { FindingsFilter } from '../../features/rulebook/findings-filter';
import { FindingsList } from '../../features/rulebook/findings-list';
import { findingsQueryOf } from '../../lib/rulebook-queries';
import { useAddressFilter } from '../../lib/use-address-filter';

const route = getRouteApi('/rulebook/findings');

/** The rulebook looked over, every position over its whole production: what a shop should mend before a unit shows it. */
export function FindingsPage() {
  const filter = route.useSearch();
  const navigate = route.useNavigate();
  const findings = useQuery(findingsQueryOf(filter));
  const [shown, choose] = useAddressFilter(filter, (search) => navigate({ search, replace: true }));
  return (
    <>
      <p>
        <Link to="/rulebook">Rulebook</Link>
      </p>
      <h1>What is wrong with the rulebook</h1>
      <FindingsFilter filter={shown} onFilter={choose} />
      <QueryView query={findings} what="the findings">
        {(list) => (
          <>
            <p>
              {list.counts.error} to mend, {list.counts.warning} to look at, {list.counts.note} good to know.
            </p>
            <FindingsList list={list} />
          </>
        )}
      </QueryView>
    </>
  );
}
