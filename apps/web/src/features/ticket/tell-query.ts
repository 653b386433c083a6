import { keepPreviousData, queryOptions, skipToken } from '@tanstack/react-query';
import { tellAnswer, type Marks, type TellRequest } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';
import { hasMarks } from './marks-typed';

/** What a part in this position can be by the marks seen so far; asked anew with every mark. */
export const tellQuery = (ticketId: number, asked: Omit<TellRequest, 'marks'>, marks: Marks | null) =>
  queryOptions({
    queryKey: ['tell', ticketId, asked, marks],
    queryFn:
      marks && hasMarks(marks)
        ? () => request(tellAnswer, 'POST', `/tickets/${ticketId}/tell`, { body: { ...asked, marks } })
        : skipToken,
    placeholderData: keepPreviousData,
  });
