import { Button, NativeSelect, Textarea } from '@mantine/core';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useEffect, useRef, type FormEvent } from 'react';
import { DayField } from '../../components/day-field';
import { ticketView, type IntakeDraft, type TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request } from '../../lib/api-client';
import { benchesQuery, linesQuery } from '../../lib/catalogue-queries';
import { enterMovesOn } from '../../lib/enter-moves-on';
import { EMPTY_INTAKE, stillNeeded, ticketFrom } from './intake-draft';
import { OwnerStep } from './owner-step';
import { UnitStep } from './unit-step';
import { useIntakeDraft } from './use-intake-draft';
import classes from './new-ticket.module.css';

/** Where one goes once the ticket is open. */
type Next = '/tickets/$id' | '/tickets/$id/tag';

interface NewTicketFormProps {
  known: Partial<IntakeDraft> | null;
  /** what was begun before a reload */
  begun: IntakeDraft | null;
}

/**
 * Takes a unit in: owner, unit, complaint, bench and promised day. What is written survives a reload; a unit that is
 * known already begins anew with its owner.
 */
export function NewTicketForm({ known, begun }: NewTicketFormProps) {
  const [draft, setDraft, forget] = useIntakeDraft(begun);
  const lines = useQuery(linesQuery);
  // Once: the unit is read again while the form is open, and what is typed by then must stay.
  const begunWith = useRef<number | null | undefined>(undefined);
  useEffect(() => {
    if (!known || begunWith.current === known.unitId) return;
    begunWith.current = known.unitId;
    setDraft({ ...EMPTY_INTAKE, ...known });
  }, [known, setDraft]);
  const navigate = useNavigate();
  const change = (part: Partial<IntakeDraft>) => setDraft((now) => ({ ...now, ...part }));
  const open = useMutation<TicketView, Error, Next>({
    mutationFn: () => request(ticketView, 'POST', '/tickets', { body: ticketFrom(draft) }),
    onSuccess: ({ id }, next) => {
      forget();
      void navigate({ to: next, params: { id } });
    },
  });
  const needed = stillNeeded(draft);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!needed) open.mutate('/tickets/$id');
  };
  return (
    <form onSubmit={submit} onKeyDown={enterMovesOn} className={classes.form}>
      <fieldset className={classes.step}>
        <legend>The owner</legend>
        <OwnerStep draft={draft} onChange={change} />
      </fieldset>
      <fieldset className={classes.step}>
        <legend>The unit</legend>
        <UnitStep draft={draft} lines={lines.data ?? []} onChange={change} />
      </fieldset>
      <WorkStep draft={draft} onChange={change} />
      <ActProblem error={open.error} />
      <div className={classes.acts}>
        <Button onClick={forget}>Start over</Button>
        {needed ? null : (
          <Button loading={open.isPending} onClick={() => open.mutate('/tickets/$id/tag')}>
            Open it and print the tag
          </Button>
        )}
        <Button type="submit" variant="filled" size="lg" disabled={needed !== null} loading={open.isPending}>
          {needed ?? 'Open the ticket'}
        </Button>
      </div>
    </form>
  );
}

function WorkStep({ draft, onChange }: { draft: IntakeDraft; onChange: (change: Partial<IntakeDraft>) => void }) {
  const benches = useQuery(benchesQuery);
  return (
    <fieldset className={classes.step}>
      <legend>The work</legend>
      <Textarea
        label="Complaint"
        description="In the owner's words."
        rows={3}
        value={draft.complaint}
        onChange={(event) => onChange({ complaint: event.currentTarget.value })}
      />
      <div className={classes.fields}>
        <NativeSelect
          label="Bench"
          value={draft.benchId ?? ''}
          onChange={(event) =>
            onChange({ benchId: event.currentTarget.value ? Number(event.currentTarget.value) : null })
          }
        >
          <option value="">No bench yet</option>
          {(benches.data ?? []).map(({ id, code, name }) => (
            <option key={id} value={id}>{`${code} · ${name}`}</option>
          ))}
        </NativeSelect>
        <DayField
          label="Promised"

          value={draft.promisedOn ?? ''}
          onChange={(day) => onChange({ promisedOn: day || null })}
        />
      </div>
    </fieldset>
  );
}
