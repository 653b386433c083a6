import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { unitName } from '../../../../../libs/papers';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { trailQuery } from '../../features/trail/trail-query';
import { UnitTrail } from '../../features/trail/unit-trail';
import { unitQuery } from '../../features/unit/unit-query';
import { count, sayInstant } from '../../lib/say';
import { useMay } from '../../lib/session';

const route = getRouteApi('/units/$id/trail');

/** Everything about one unit in order, for whoever must prove later what was known, done and decided. */
export function TrailPage() {
  const { id } = route.useParams();
  const maySee = useMay('see-trail');
  if (maySee) return <Trail id={id} />;
  return (
    <EmptyView title="A manager reads this">
      <p>The trail names who did what, so a manager or an administrator reads it.</p>
    </EmptyView>
  );
}

function Trail({ id }: { id: number }) {
  const visit = useQuery(unitQuery(id));
  const trail = useQuery(trailQuery(id));
  const unit = visit.data?.unit;
  return (
    <>
      <p className="no-print bar">
        <Link to="/units/$id" params={{ id }}>
          Back to the unit
        </Link>
        <Button onClick={() => window.print()}>Print this page</Button>
      </p>
      <h1>Everything done about this unit</h1>
      <p>
        {unit ? unitName(unit) : 'Unit'} <span className="num">{unit?.serial ?? ''}</span>
      </p>
      <QueryView query={trail} what="the trail">
        {(entries) => (
          <>
            <p className="soft">
              {count(entries.length, 'entry', 'entries')}, oldest first, as of{' '}
              {sayInstant(new Date(trail.dataUpdatedAt).toISOString())}.
            </p>
            <p className="soft">
              Rulings are by the papers of their day and what the shop knew at that moment, of the papers and of the
              unit: its line, model, options, serial number and possible build days. Names of lines, positions and
              parts, and verdicts marked so, are those of today.
            </p>
            <UnitTrail entries={entries} />
          </>
        )}
      </QueryView>
    </>
  );
}
