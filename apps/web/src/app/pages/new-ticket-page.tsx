import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useMemo } from 'react';
import { NewTicketForm } from '../../features/new-ticket/new-ticket-form';
import { intakeDraftQuery } from '../../features/new-ticket/use-intake-draft';
import { unitQuery } from '../../features/unit/unit-query';

const route = getRouteApi('/new-ticket');

/** A unit comes in; one that the shop knows comes with its owner. */
export function NewTicketPage() {
  const { unit: unitId } = route.useSearch();
  const { data } = useQuery({ ...unitQuery(unitId ?? 0), enabled: unitId !== undefined });
  // Whoever cannot be told what was begun begins anew.
  const begun = useQuery(intakeDraftQuery);
  const known = useMemo(() => {
    if (!data) return null;
    const { unit } = data;
    const unitName = [unit.lineName, unit.modelNumber, unit.serial].filter(Boolean).join(' ');
    return { ownerId: unit.owner.id, ownerName: unit.owner.name, unitId: unit.id, unitName };
  }, [data]);
  return (
    <>
      <h1>Take a unit in</h1>
      {begun.isPending ? null : <NewTicketForm known={known} begun={begun.data?.draft ?? null} />}
    </>
  );
}
