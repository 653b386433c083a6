import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { Caution } from '../../components/caution';
import { QueryView } from '../../components/query-view';
import { lookUpQuery } from '../../lib/look-up-query';
import { WallChart } from '../../features/look-up/wall-chart';
import { sayDayText } from '../../lib/say';

const route = getRouteApi('/wall-chart/$line');

/** The wall chart of a line over its whole production, made for printing. */
export function WallChartPage() {
  const { line } = route.useParams();
  const answer = useQuery(lookUpQuery({ lineCode: line, modelNumber: null, serial: null, options: {}, evidence: [] }));
  return (
    <QueryView query={answer} what="the wall chart">
      {(found) => (
        <>
          <h1>{`${found.line.maker} ${found.line.name}`}</h1>
          <p>
            Required parts by build date, by the papers in force on {sayDayText(found.inForceOn)}, rulebook revision{' '}
            {found.revision}. A gap says nothing; a split diamond marks papers that disagree.
          </p>
          <WallChart answer={found} />
          <Caution>Never fit a stronger fastener than the one required. The maker&apos;s papers come first.</Caution>
          <Button className="no-print" onClick={() => window.print()}>
            Print the chart
          </Button>
        </>
      )}
    </QueryView>
  );
}
