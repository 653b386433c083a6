import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { FailedView } from '../../components/failed-view';
import { QueryView } from '../../components/query-view';
import { CallbacksOverTime, UnsettledBuildDates, WrongParts } from '../../features/figures/answer-figures';
import { figuresQuery } from '../../features/figures/figures-query';
import { SpanChoice } from '../../features/figures/span-choice';
import { ByBench, ByPart, TimeInStage } from '../../features/figures/ticket-figures';
import { saySpanText } from '../../lib/say';
import { useMay } from '../../lib/session';
import { useAddressFilter } from '../../lib/use-address-filter';

const route = getRouteApi('/figures');

/** How the shop did in a span of days: what each figure counts, a picture, and the same as a table. */
export function FiguresPage() {
  const span = route.useSearch();
  const navigate = route.useNavigate();
  const [chosen, choose] = useAddressFilter(span, (search) => navigate({ search, replace: true }));
  const mayLook = useMay('see-figures');
  const figures = useQuery({ ...figuresQuery(span), enabled: mayLook });
  if (!mayLook) return <p>The figures are for the counter, a manager or an administrator.</p>;
  return (
    <>
      <h1>Figures</h1>
      <QueryView query={figures} what="the figures">
        {(data) => (
          <>
            <SpanChoice shown={{ from: chosen.from ?? data.from, to: chosen.to ?? data.to }} onSpan={choose} />
            {figures.isError ? (
              <FailedView what="the figures of these days" error={figures.error} retry={() => void figures.refetch()} />
            ) : null}
            <p role="status">{saySpanText(data)}</p>
            <ByBench rows={data.byBench} />
            <ByPart rows={data.byPart} />
            <WrongParts rows={data.wrongParts} />
            <CallbacksOverTime rows={data.callbacks} />
            <TimeInStage rows={data.stages} />
            <UnsettledBuildDates rows={data.unsettled} />
          </>
        )}
      </QueryView>
    </>
  );
}
