import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { OwnerActs } from '../../features/owner/owner-acts';
import { OwnerRecord } from '../../features/owner/owner-record';
import { personalDataQuery } from '../../features/owner/personal-data-query';
import { useMay } from '../../lib/session';

const route = getRouteApi('/owners/$id');

/** What is kept of one owner, to be handed over or erased on request. */
export function OwnerPage() {
  const { id } = route.useParams();
  if (useMay('manage-personal-data')) return <Owner id={id} />;
  return (
    <EmptyView title="A manager sees to this">
      <p>What is kept of a person is handed over and erased by a manager or an administrator.</p>
    </EmptyView>
  );
}

function Owner({ id }: { id: number }) {
  const kept = useQuery(personalDataQuery(id));
  return (
    <>
      <h1>What is kept of this owner</h1>
      <QueryView query={kept} what="what is kept">
        {(data) => (
          <>
            <OwnerActs owner={data.owner} />
            <OwnerRecord data={data} />
          </>
        )}
      </QueryView>
    </>
  );
}
