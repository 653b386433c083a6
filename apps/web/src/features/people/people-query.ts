import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  invited,
  peopleList,
  personView,
  signInRules,
  type ChangePerson,
  type NewPerson,
  type PersonElsewhere,
  type PersonView,
  type SignInRules,
} from '../../../../../libs/contracts';
import { request, send } from '../../lib/api-client';

/** Everybody of the shop and its locations. */
export const peopleQuery = queryOptions({
  queryKey: ['people'],
  queryFn: () => request(peopleList, 'GET', '/people'),
});

/** Marks the list old when an act has ended, refused or not: a stale version shows the present state. */
function useOldList() {
  const client = useQueryClient();
  return { onSettled: () => client.invalidateQueries({ queryKey: peopleQuery.queryKey }) };
}

export function useAddPerson() {
  return useMutation({
    mutationFn: (body: NewPerson) => request(invited, 'POST', '/people', { body }),
    ...useOldList(),
  });
}

export function useChangePerson({ id, version }: PersonView) {
  return useMutation({
    mutationFn: (body: ChangePerson) => request(personView, 'PATCH', `/people/${id}`, { body, version }),
    ...useOldList(),
  });
}

export function useNewLink({ id }: PersonView) {
  return useMutation({
    mutationFn: () => request(invited, 'POST', `/people/${id}/link`),
    ...useOldList(),
  });
}

/** Takes the second factor of somebody who lost it away. */
export function useResetSecondFactor({ id }: PersonView) {
  return useMutation({
    mutationFn: () => send('POST', `/people/${id}/second-factor/reset`),
    ...useOldList(),
  });
}

/** What the shop asks of a sign-in. */
export const signInRulesQuery = queryOptions({
  queryKey: ['sign-in-rules'],
  queryFn: () => request(signInRules, 'GET', '/settings/sign-in'),
});

export function useChangeSignInRules() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: SignInRules) => request(signInRules, 'PUT', '/settings/sign-in', { body }),
    onSuccess: (rules) => client.setQueryData(signInRulesQuery.queryKey, rules),
  });
}

export function useSetElsewhere({ id }: PersonView) {
  return useMutation({
    mutationFn: (body: PersonElsewhere) => request(personView, 'PUT', `/people/${id}/elsewhere`, { body }),
    ...useOldList(),
  });
}
