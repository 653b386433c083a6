import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { UnitVisit } from '../../../../../libs/contracts';
import { unitName } from '../../../../../libs/papers';
import { QueryView } from '../../components/query-view';
import { TagCode } from '../../features/tag/tag-code';
import { unitQuery } from '../../features/unit/unit-query';
import { VisitGreeting } from '../../features/unit/visit-greeting';
import { useMay } from '../../lib/session';
import classes from './unit-page.module.css';

const route = getRouteApi('/units/$id');

/** A unit that comes in again: what waits for it, what it is, and its way into the shop. */
export function UnitPage() {
  const { id } = route.useParams();
  const visit = useQuery(unitQuery(id));
  const maySeeTrail = useMay('see-trail');
  return (
    <QueryView query={visit} what="the unit">
      {(data) => (
        <>
          <UnitHead visit={data} />
          <VisitGreeting visit={data} />
          {maySeeTrail ? (
            <p>
              <Link to="/units/$id/trail" params={{ id }}>
                Everything done about this unit
              </Link>
            </p>
          ) : null}
          <h2 className={classes.part}>Its own tag</h2>
          <div className={classes.tag}>
            <TagCode number={data.code} />
            <p className="num">{data.code}</p>
          </div>
        </>
      )}
    </QueryView>
  );
}

function UnitHead({ visit: { unit, here, openTicket } }: { visit: UnitVisit }) {
  return (
    <header className={classes.head}>
      <div>
        <h1>{unitName(unit)}</h1>
        <p>
          <span className="num">{unit.serial ?? 'no serial'}</span>, {unit.owner.name}
        </p>
      </div>
      {openTicket ? (
        <Button component={Link} to={`/tickets/${openTicket.id}`} variant="filled">
          In the shop on {openTicket.number}
        </Button>
      ) : here ? (
        <Button component={Link} to={`/new-ticket?unit=${unit.id}`} variant="filled">
          Take it in again
        </Button>
      ) : null}
    </header>
  );
}
