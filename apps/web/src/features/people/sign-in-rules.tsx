import { Checkbox } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { ActProblem } from '../../components/act-problem';
import { QueryView } from '../../components/query-view';
import { signInRulesQuery, useChangeSignInRules } from './people-query';

/** What the shop asks of those who sign in. */
export function SignInRulesChoice() {
  const rules = useQuery(signInRulesQuery);
  const change = useChangeSignInRules(rules.data?.version ?? 0);
  return (
    <QueryView query={rules} what="what a sign-in needs">
      {({ secondFactorRequired }) => (
        <>
          <Checkbox
            label="Managers and administrators need a second factor"
            description="Who has none yet can do nothing else before it is added."
            checked={secondFactorRequired}
            disabled={change.isPending}
            onChange={(event) => change.mutate({ secondFactorRequired: event.currentTarget.checked })}
          />
          <ActProblem error={change.error} />
        </>
      )}
    </QueryView>
  );
}
