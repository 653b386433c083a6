import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { QueryView } from '../../components/query-view';
import { BulletinForm } from '../../features/bulletins/bulletin-form';
import { bulletinQuery } from '../../features/bulletins/bulletins-query';
import { newPaper, paperFrom } from '../../features/bulletins/editor-state';

const route = getRouteApi('/bulletins/$id/edit');

/** A new paper. */
export function NewBulletinPage() {
  const [first] = useState(newPaper);
  return (
    <>
      <h1>Write a paper down</h1>
      <BulletinForm saved={null} first={first} />
    </>
  );
}

/** A paper that is not published yet. */
export function EditBulletinPage() {
  const { id } = route.useParams();
  const bulletin = useQuery(bulletinQuery(id));
  return (
    <QueryView query={bulletin} what="the bulletin">
      {(paper) => (
        <>
          <h1>{`Change ${paper.number}`}</h1>
          <BulletinForm key={paper.version} saved={paper} first={paperFrom(paper)} />
        </>
      )}
    </QueryView>
  );
}
