import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { BoardFilterBar } from '../../features/board/board-filter-bar';
import { boardQuery } from '../../features/board/get-board';
import { StageColumns } from '../../features/board/stage-columns';
import { useAddressFilter } from '../../lib/use-address-filter';

const route = getRouteApi('/board');

/** The job board: what is in the shop, by stage. */
export function BoardPage() {
  const filter = route.useSearch();
  const navigate = route.useNavigate();
  const board = useQuery(boardQuery(filter));
  const [shown, choose] = useAddressFilter(filter, (search) => navigate({ search, replace: true }));
  return (
    <>
      <h1 className="sr-only">Job board</h1>
      <BoardFilterBar
        benches={board.data?.benches ?? []}
        owners={board.data?.owners ?? []}
        filter={shown}
        onFilter={choose}
      />
      <QueryView query={board} what="the board">
        {({ stages }) =>
          stages.every(({ count }) => count === 0) ? (
            <EmptyView title="No open ticket">
              <p>
                {Object.values(filter).some(Boolean)
                  ? 'Nothing fits what you asked for; ask for less.'
                  : 'Take a unit in to begin.'}
              </p>
            </EmptyView>
          ) : (
            <StageColumns stages={stages} />
          )
        }
      </QueryView>
    </>
  );
}
