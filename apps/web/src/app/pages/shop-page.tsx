import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { EditionsList } from '../../features/shop-data/editions-list';
import { RegulationsList } from '../../features/shop-data/regulations-list';
import { SchemesList } from '../../features/shop-data/schemes-list';
import { useMay } from '../../lib/session';
import { editionsQuery, schemesQuery } from '../../lib/shop-data-queries';
import classes from './shop-page.module.css';

/** What build dates are read by: the makers' serial schemes, editions of standards, public rules. */
export function ShopPage() {
  const schemes = useQuery(schemesQuery);
  const editions = useQuery(editionsQuery);
  const mayEdit = useMay('edit-shop-data');
  return (
    <>
      <Doors />
      <h1>What build dates are read by</h1>
      <section aria-labelledby="schemes">
        <h2 id="schemes">Serial schemes of the makers</h2>
        {mayEdit ? (
          <p>
            <Button component={Link} to="/shop/schemes/new" variant="filled">
              Write a scheme down
            </Button>
          </p>
        ) : null}
        <QueryView query={schemes} what="the serial schemes">
          {(all) =>
            all.length === 0 ? (
              <EmptyView title="No scheme yet">
                <p>Write down how a maker writes serials; until then a serial says nothing of the build date.</p>
              </EmptyView>
            ) : (
              <SchemesList schemes={all} />
            )
          }
        </QueryView>
      </section>
      <section aria-labelledby="editions" className={classes.part}>
        <h2 id="editions">Editions of standards that plates name</h2>
        <p className="soft">A label that names an edition is not older than that edition; there is no ceiling.</p>
        <QueryView query={editions} what="the editions of standards">
          {(all) => <EditionsList editions={all} mayEdit={mayEdit} />}
        </QueryView>
      </section>
      <section aria-labelledby="regulations" className={classes.part}>
        <h2 id="regulations">Public rules, the same in every shop</h2>
        <RegulationsList />
      </section>
    </>
  );
}

/** To the shop's other pages, for those who may open them. */
function Doors() {
  const maySettle = useMay('change-settings');
  const mayBring = useMay('bring-in');
  const mayLetIn = useMay('manage-tokens');
  return (
    <>
      {maySettle ? (
        <p>
          <Link to="/shop/settings">Settings: how papers stand, how far back owners are called</Link>
        </p>
      ) : null}
      <p>
        <Link to="/shop/parts">Parts and the bar codes of their bags</Link>
      </p>
      {mayBring ? (
        <p>
          <Link to="/shop/in-and-out">In and out: bring your spreadsheets in, take your data out</Link>
        </p>
      ) : null}
      {mayLetIn ? (
        <p>
          <Link to="/shop/programs">Other programs: let them ask here, and tell them what happens</Link>
        </p>
      ) : null}
    </>
  );
}
