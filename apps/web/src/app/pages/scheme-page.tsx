import { useQuery } from '@tanstack/react-query';
import { getRouteApi, useNavigate } from '@tanstack/react-router';
import type { SavedSerialScheme } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { QueryView } from '../../components/query-view';
import { RecomputeProgress } from '../../features/shop-data/recompute-progress';
import { SchemeForm } from '../../features/shop-data/scheme-form';
import { NEW_SCHEME, typedFrom } from '../../features/shop-data/typed-scheme';
import { linesQuery } from '../../lib/catalogue-queries';
import { useMay } from '../../lib/session';
import { schemesQuery } from '../../lib/shop-data-queries';

const route = getRouteApi('/shop/schemes/$id');

/** A new serial scheme. */
export function NewSchemePage() {
  return (
    <>
      <h1>Write a serial scheme down</h1>
      <Editor id={null} />
    </>
  );
}

/** A serial scheme of the shop; after keeping it, how far the units have been dated again. */
export function SchemePage() {
  const { id } = route.useParams();
  const { recheck } = route.useSearch();
  return (
    <>
      <h1>Serial scheme</h1>
      {recheck === undefined ? null : <RecomputeProgress recheckId={recheck} />}
      <Editor id={id} />
    </>
  );
}

function Editor({ id }: { id: number | null }) {
  const schemes = useQuery(schemesQuery);
  const lines = useQuery(linesQuery);
  const mayEdit = useMay('edit-shop-data');
  const navigate = useNavigate();
  const onSaved = ({ saved, recheck }: SavedSerialScheme) =>
    void navigate({ to: '/shop/schemes/$id', params: { id: saved.id }, search: { recheck: recheck.id } });
  return (
    <QueryView query={schemes} what="the serial schemes">
      {(all) => {
        const saved = all.find((one) => one.id === id) ?? null;
        if (id !== null && !saved) return <EmptyView title="There is no such scheme">{null}</EmptyView>;
        const first = saved ? typedFrom(saved.scheme) : NEW_SCHEME;
        const form = { saved, first, lines: lines.data ?? [], schemes: all, mayEdit, onSaved };
        return <SchemeForm key={saved?.version ?? 0} {...form} />;
      }}
    </QueryView>
  );
}
