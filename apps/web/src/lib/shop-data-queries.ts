import { queryOptions } from '@tanstack/react-query';
import { serialSchemeRows, standardEditionRows } from '../../../../libs/contracts';
import { request } from './api-client';

/** Serial schemes by maker, then by the time they were used. */
export const schemesQuery = queryOptions({
  queryKey: ['shop-data', 'schemes'],
  queryFn: () => request(serialSchemeRows, 'GET', '/serial-schemes'),
});

/** Editions of standards, newest first within a standard. */
export const editionsQuery = queryOptions({
  queryKey: ['shop-data', 'editions'],
  queryFn: () => request(standardEditionRows, 'GET', '/standard-editions'),
});
