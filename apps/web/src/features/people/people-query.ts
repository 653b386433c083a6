import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  invited,
  peopleList,
  personView,
  settledSignInRules,
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

export function useNewLink({ id, version }: PersonView) {
  return useMutation({
    mutationFn: () => request(invited, 'POST', `/people/${id}/link`, { version }),
    ...useOldList(),
  });
}

/** Takes the second factor of somebody who lost it away. */
export function useResetSecondFactor({ id, version }: PersonView) {
  return useMutation({
    mutationFn: () => send('POST', `/people/${id}/second-factor/reset`, { version }),
    ...useOldList(),
  });
}

/** What the shop asks of a sign-in. */
export const signInRulesQuery = queryOptions({
  queryKey: ['sign-in-rules'],
  queryFn: () => request(settledSignInRules, 'GET', '/settings/sign-in'),
});

export function useChangeSignInRules(version: number) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (body: SignInRules) => request(settledSignInRules, 'PUT', '/settings/sign-in', { body, version }),
    onSuccess: (rules) => client.setQueryData(signInRulesQuery.queryKey, rules),
    onError: () => client.invalidateQueries({ queryKey: signInRulesQuery.queryKey }),
  });
}

export function useSetElsewhere({ id, version }: PersonView) {
  return useMutation({
    mutationFn: (body: PersonElsewhere) => request(personView, 'PUT', `/people/${id}/elsewhere`, { body, version }),
    ...useOldList(),
  });
}
