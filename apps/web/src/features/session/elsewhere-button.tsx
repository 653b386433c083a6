import { Button } from '@mantine/core';
import { useMutation, useQuery } from '@tanstack/react-query';
import { elsewhereBegun } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request } from '../../lib/api-client';
import { elsewhereQuery } from '../../lib/elsewhere-query';

/** The way to another provider, where the shop has one. */
export function ElsewhereButton() {
  const offered = useQuery(elsewhereQuery);
  const leave = useMutation({
    mutationFn: () => request(elsewhereBegun, 'POST', '/session/elsewhere'),
    onSuccess: ({ address }) => window.location.assign(address),
  });
  const name = offered.data?.name ?? null;
  if (name === null) return null;
  return (
    <>
      <Button onClick={() => leave.mutate()} loading={leave.isPending} fullWidth>
        Sign in with {name}
      </Button>
      <ActProblem error={leave.error} />
    </>
  );
}
