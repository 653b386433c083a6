import { queryOptions } from '@tanstack/react-query';
import { unitVisit } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const unitQuery = (id: number) =>
  queryOptions({ queryKey: ['ticket', 'unit', id], queryFn: () => request(unitVisit, 'GET', `/units/${id}`) });
