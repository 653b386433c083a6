import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { BoardFilterBar } from '../../features/board/board-filter-bar';
import { boardQuery } from '../../features/board/get-board';
import { StageColumns } from '../../features/board/stage-columns';

const route = getRouteApi('/board');

/** The job board: what is in the shop, by stage. */
export function BoardPage() {
  const filter = route.useSearch();
  const navigate = route.useNavigate();
  const board = useQuery(boardQuery(filter));
  return (
    <>
      <h1 className="sr-only">Job board</h1>
      <BoardFilterBar
        benches={board.data?.benches ?? []}
        owners={board.data?.owners ?? []}
        filter={filter}
        onFilter={(wanted) =>
          void navigate({
            search: wanted,
            replace: true,
          })
        }
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
