import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { PapersTable } from '../../features/rulebook/papers-table';
import { RulebookWays } from '../../features/rulebook/rulebook-ways';
import { RulesFilter } from '../../features/rulebook/rules-filter';
import { RulesList } from '../../features/rulebook/rules-list';
import { rulebookQuery, rulesQueryOf } from '../../lib/rulebook-queries';
import { useAddressFilter } from '../../lib/use-address-filter';

const route = getRouteApi('/rulebook');

/** All that the shop holds true about parts: wall charts, rules as sentences, and the papers they rest on. */
export function RulebookPage() {
  const filter = route.useSearch();
  const navigate = route.useNavigate();
  const overview = useQuery(rulebookQuery);
  const rules = useQuery(rulesQueryOf(filter));
  const [shown, choose] = useAddressFilter(filter, (search) => navigate({ search, replace: true }));
  return (
    <QueryView query={overview} what="the rulebook">
      {({ lines, sources, revision }) => (
        <>
          <h1>Rulebook</h1>
          <RulebookWays lines={lines} />
          <h2>Rules</h2>
          <RulesFilter filter={shown} onFilter={choose} />
          <QueryView query={rules} what="the rules">
            {(list) => <RulesList list={list} />}
          </QueryView>
          <h2>Papers</h2>
          <p className="soft">The higher the standing of a paper, the more it counts. Rulebook revision {revision}.</p>
          <PapersTable sources={sources} />
        </>
      )}
    </QueryView>
  );
}
