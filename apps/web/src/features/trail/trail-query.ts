import { queryOptions } from '@tanstack/react-query';
import { unitTrail, type TrailEntry } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** The whole trail of a unit, every page of it: an auditor who prints it must have all of it. */
export const trailQuery = (id: number) =>
  queryOptions({ queryKey: ['ticket', 'trail', id], queryFn: () => wholeTrail(id) });

async function wholeTrail(id: number): Promise<TrailEntry[]> {
  const all: TrailEntry[] = [];
  let after: string | undefined;
  do {
    const { items, next } = await request(unitTrail, 'GET', `/units/${id}/trail`, { query: { after } });
    all.push(...items);
    after = next ?? undefined;
  } while (after !== undefined);
  return all;
}
