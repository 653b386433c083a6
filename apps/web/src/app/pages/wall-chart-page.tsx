import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { Caution } from '../../components/caution';
import { QueryView } from '../../components/query-view';
import { WallKey } from '../../components/wall-key';
import { WallPicture } from '../../components/wall-picture';
import { WallTable } from '../../components/wall-table';
import { DaysChosen } from '../../features/rulebook/days-chosen';
import { sayDayText } from '../../lib/say';
import { wallChartQuery } from '../../lib/rulebook-queries';
import { useAddressFilter } from '../../lib/use-address-filter';
import classes from './wall-chart-page.module.css';

const route = getRouteApi('/wall-chart/$line');

/** The picture of a line's rules over its whole production, on the page and, printed, on the wall over the bench. */
export function WallChartPage() {
  const { line } = route.useParams();
  const days = route.useSearch();
  const navigate = route.useNavigate();
  const [chosen, choose] = useAddressFilter(days, (search) => navigate({ search, replace: true }));
  const chart = useQuery(wallChartQuery(line, days));
  return (
    <QueryView query={chart} what="the wall chart">
      {(found) => (
        <>
          <p className="no-print">
            <Link to="/rulebook" search={{ line }}>
              Rules of this line
            </Link>
          </p>
          <h1>{`${found.line.maker} ${found.line.name}`}</h1>
          <div className={`${classes.days} no-print`}>
            <DaysChosen days={chosen} onDays={choose} />
            <Button variant="filled" onClick={() => window.print()}>
              Print the chart
            </Button>
          </div>
          <p>
            Parts by build date, by the papers in force on {sayDayText(found.inForceOn)}, as known on{' '}
            {sayDayText(found.knownOn)}; rulebook revision {found.revision}.
          </p>
          <WallPicture chart={found} />
          <WallKey />
          <Caution>Never fit a stronger fastener than the one required. The maker&apos;s papers come first.</Caution>
          <h2>The same in words</h2>
          <div className={classes.scroll}>
            <WallTable chart={found} />
          </div>
        </>
      )}
    </QueryView>
  );
}
