import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { RecheckView } from '../../../../../libs/contracts';
import { QueryView } from '../../components/query-view';
import { RecheckProgress } from '../../features/bulletins/recheck-progress';
import { recheckQuery } from '../../lib/recheck-query';
import { sayInstant } from '../../lib/say';

const route = getRouteApi('/rechecks/$id');

/** One recheck: what it was started for, how far it is, and where what it changed is seen. */
export function RecheckPage() {
  const { id } = route.useParams();
  const recheck = useQuery(recheckQuery(id));
  return (
    <QueryView query={recheck} what="the recheck">
      {(data) => (
        <>
          <h1>{data.bulletin ? `Recheck for ${data.bulletin}` : 'Recheck'}</h1>
          <p className="soft">{`Ordered ${sayInstant(data.createdAt)}${WHY[data.cause] ?? ''}.`}</p>
          <RecheckProgress recheck={data} />
          <Onward recheck={data} />
        </>
      )}
    </QueryView>
  );
}

/** By the cause on record; one that is not known is left out. */
const WHY: Record<string, string> = {
  setting: ', because a setting of the shop was changed',
  evidence: ', because what build dates are read by was changed',
  publish: ', because a paper was published',
  withdraw: ', because a paper was withdrawn',
  correct: ', because a paper was corrected',
  'in-force': ', because a paper came into force',
  order: ' by a manager',
  import: ', because a spreadsheet was brought in',
};

function Onward({ recheck: { state } }: { recheck: RecheckView }) {
  return (
    <p>
      {state === 'done' ? null : 'It goes on by itself; you can leave this page. '}
      <Link to="/flagged">Flagged installs</Link> · <Link to="/callbacks">Callbacks</Link>
    </p>
  );
}
