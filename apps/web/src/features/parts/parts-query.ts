import { useMutation, useQueryClient } from '@tanstack/react-query';
import { part, type AddTradeNumber, type Part } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

type TradeNumberAct = { readonly add: AddTradeNumber } | { readonly remove: string };

/** Writes a trade number of the part down, or takes one away. */
export function useTradeNumberAct(partId: number) {
  const client = useQueryClient();
  return useMutation<Part, Error, TradeNumberAct>({
    mutationFn: (act) =>
      'add' in act
        ? request(part, 'POST', `/parts/${partId}/trade-numbers`, { body: act.add })
        : request(part, 'DELETE', `/parts/${partId}/trade-numbers/${act.remove}`),
    onSettled: () => client.invalidateQueries({ queryKey: ['parts'] }),
  });
}
