import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { BulletinsTable } from '../../features/bulletins/bulletins-table';
import { bulletinsQuery } from '../../features/bulletins/bulletins-query';
import { useMay } from '../../lib/session';

/** The papers of the shop. */
export function BulletinsPage() {
  const bulletins = useQuery(bulletinsQuery);
  const mayEdit = useMay('edit-bulletins');
  return (
    <>
      <h1>Bulletins and other papers</h1>
      {mayEdit ? (
        <p>
          <Button component={Link} to="/bulletins/new" variant="filled">
            Write one down
          </Button>
        </p>
      ) : null}
      <QueryView query={bulletins} what="the bulletins">
        {(all) =>
          all.length === 0 ? (
            <EmptyView title="No paper yet">
              <p>Write down the first: what it requires, where, and for which build dates.</p>
            </EmptyView>
          ) : (
            <BulletinsTable bulletins={all} />
          )
        }
      </QueryView>
    </>
  );
}
