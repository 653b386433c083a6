import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { BulletinReader } from '../../features/bulletins/bulletin-reader';
import { bulletinQuery } from '../../features/bulletins/bulletins-query';
import { PublishPanel } from '../../features/bulletins/publish-panel';
import { PullsList } from '../../features/shelf/pulls-list';
import { RecheckProgress } from '../../features/bulletins/recheck-progress';

const route = getRouteApi('/bulletins/$id');

/** One paper: read it, ask what it would bring, publish it, watch the recheck, withdraw it. */
export function BulletinPage() {
  const { id } = route.useParams();
  const bulletin = useQuery(bulletinQuery(id));
  return (
    <QueryView query={bulletin} what="the bulletin">
      {(paper) => (
        <>
          <p>
            <Link to="/bulletins">All papers</Link>
          </p>
          <h1>{paper.title}</h1>
          <PublishPanel key={paper.version} bulletin={paper} />
          {paper.recheck ? (
            <>
              <RecheckProgress recheck={paper.recheck} />
              {paper.recheck.callbacksOpened > 0 ? (
                <p>
                  <Link to="/callbacks">To the callbacks</Link>
                </p>
              ) : null}
            </>
          ) : null}
          {paper.state === 'published' ? <PullsList bulletinId={paper.id} /> : null}
          <BulletinReader bulletin={paper} />
        </>
      )}
    </QueryView>
  );
}
