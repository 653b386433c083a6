import { queryOptions, skipToken } from '@tanstack/react-query';
import { lookUpAnswer, type LookUpRequest } from '../../../../libs/contracts';
import { request } from './api-client';

/** The possible build days and the ruling per position for a unit that has no ticket; null asks nothing. */
export const lookUpQuery = (asked: LookUpRequest | null) =>
  queryOptions({
    queryKey: ['look-up', asked],
    queryFn: asked ? () => request(lookUpAnswer, 'POST', '/look-up', { body: asked }) : skipToken,
  });
