import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import {
  findingList,
  placeExplanation,
  ruleList,
  rulebookOverview,
  wallChartView,
  type FindingsQuery,
  type RulesQuery,
} from '../../../../libs/contracts';
import { request } from './api-client';

/** By the papers of which day, as known on which day; today where left out. */
export interface ChosenDays {
  inForceOn?: string;
  knownOn?: string;
}

export const rulebookQuery = queryOptions({
  queryKey: ['rulebook'],
  queryFn: () => request(rulebookOverview, 'GET', '/rulebook'),
});

export const rulesQueryOf = (query: Partial<RulesQuery>) =>
  queryOptions({
    queryKey: ['rulebook', 'rules', query],
    queryFn: () => request(ruleList, 'GET', '/rulebook/rules', { query }),
    placeholderData: keepPreviousData,
  });

/** The audit runs when it is asked for; its answer is looked at again only after the rulebook can have changed. */
export const findingsQueryOf = (query: FindingsQuery) =>
  queryOptions({
    queryKey: ['rulebook', 'findings', query],
    queryFn: () => request(findingList, 'GET', '/rulebook/findings', { query }),
    placeholderData: keepPreviousData,
  });

export const wallChartQuery = (line: string, days: ChosenDays) =>
  queryOptions({
    queryKey: ['rulebook', 'wall-chart', line, days],
    queryFn: () =>
      request(wallChartView, 'GET', `/rulebook/wall-chart/${encodeURIComponent(line)}`, { query: { ...days } }),
    placeholderData: keepPreviousData,
  });

/** The whole chain behind the verdict of a place; asked for when it is opened. */
export const explanationQuery = (ticketId: number, position: string, place: number, version: number, open: boolean) =>
  queryOptions({
    queryKey: ['explain', ticketId, position, place, version],
    enabled: open,
    queryFn: () =>
      request(placeExplanation, 'GET', `/tickets/${ticketId}/places/${encodeURIComponent(position)}/${place}/explain`),
  });
