import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { moneySettings, type MoneySettings } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const moneyQuery = queryOptions({
  queryKey: ['settings', 'money'],
  queryFn: () => request(moneySettings, 'GET', '/settings/money'),
});

export function useChangeMoney() {
  const client = useQueryClient();
  return useMutation<MoneySettings, Error, MoneySettings>({
    mutationFn: (body) => request(moneySettings, 'PUT', '/settings/money', { body }),
    onSuccess: (kept) => {
      client.setQueryData(moneyQuery.queryKey, kept);
      void client.invalidateQueries({ queryKey: ['ticket'] });
    },
  });
}
