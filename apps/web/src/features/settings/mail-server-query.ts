import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  mailServerView,
  mailTrialSent,
  type ChangeMailServer,
  type MailServerView,
  type MailTrialSent,
} from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const mailServerQuery = queryOptions({
  queryKey: ['mail-server'],
  queryFn: () => request(mailServerView, 'GET', '/settings/mail-server'),
});

/** Settles the mail server on the version its form was filled from. */
export function useSettleMailServer(version: number) {
  const client = useQueryClient();
  return useMutation<MailServerView, Error, ChangeMailServer>({
    mutationFn: (body) => request(mailServerView, 'PUT', '/settings/mail-server', { body, version }),
    onSuccess: (kept) => client.setQueryData(mailServerQuery.queryKey, kept),
    onError: () => client.invalidateQueries({ queryKey: mailServerQuery.queryKey }),
  });
}

export function useTryMail() {
  return useMutation<MailTrialSent, Error, string>({
    mutationFn: (to) => request(mailTrialSent, 'POST', '/settings/mail-server/trial', { body: { to } }),
  });
}
