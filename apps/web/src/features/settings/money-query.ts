import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { settledMoney, type MoneySettings, type SettledMoney } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const moneyQuery = queryOptions({
  queryKey: ['settings', 'money'],
  queryFn: () => request(settledMoney, 'GET', '/settings/money'),
});

/** Settles it on the version that was seen; refused or not, what is known of it is old afterwards. */
export function useChangeMoney(version: number) {
  const client = useQueryClient();
  return useMutation<SettledMoney, Error, MoneySettings>({
    mutationFn: (body) => request(settledMoney, 'PUT', '/settings/money', { body, version }),
    onSuccess: (kept) => {
      client.setQueryData(moneyQuery.queryKey, kept);
      void client.invalidateQueries({ queryKey: ['ticket'] });
    },
    onError: () => client.invalidateQueries({ queryKey: moneyQuery.queryKey }),
  });
}
