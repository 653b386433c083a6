import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { FormEvent } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { UnitIdentityFields } from '../../components/unit-identity-fields';
import { linesQuery } from '../../lib/catalogue-queries';
import { useDraftOver } from '../../lib/draft';
import { useMay } from '../../lib/session';
import { identityOf } from './identity-of';
import { useUnitAct } from './ticket-query';
import classes from './unit-panel.module.css';

/** Plate, line, model, serial and options; keeping them judges the unit's parts again. */
export function IdentityForm({ ticket }: { ticket: TicketView }) {
  const lines = useQuery(linesQuery);
  const [identity, setIdentity, forget] = useDraftOver(`ticket.${ticket.id}.identity`, identityOf(ticket.unit));
  const act = useUnitAct(ticket.id);
  const may = useMay('identify-unit') && ticket.closedAt === null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    act.mutate({ method: 'PUT', path: '/identity', body: identity }, { onSuccess: forget });
  };
  return (
    <form onSubmit={submit}>
      <UnitIdentityFields lines={lines.data ?? []} value={identity} onChange={setIdentity} />
      <ActProblem error={act.error} />
      {may ? (
        <Button type="submit" variant="filled" loading={act.isPending} className={classes.save}>
          Keep plate and serial
        </Button>
      ) : null}
    </form>
  );
}
