import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { unitVisit } from '../../../../../libs/contracts';
import { request, sendAct } from '../../lib/api-client';
import type { ActBelow } from '../../lib/api-routes';

export const unitQuery = (id: number) =>
  queryOptions({ queryKey: ['ticket', 'unit', id], queryFn: () => request(unitVisit, 'GET', `/units/${id}`) });

/** One change of the unit, made on the version its form was filled from, else on the newest; its greeting is fetched anew. */
export function useVisitAct(id: number) {
  const client = useQueryClient();
  const key = unitQuery(id).queryKey;
  return useMutation<unknown, Error, ActBelow<'/units/{id}'> & { version?: number }>({
    scope: { id: `unit-${id}` },
    mutationFn: (act) => sendAct(`/units/${id}`, act, act.version ?? client.getQueryData(key)?.unit.version),
    onSettled: () => client.invalidateQueries({ queryKey: key }),
  });
}
