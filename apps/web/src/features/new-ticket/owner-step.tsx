import { Button, Checkbox, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { IntakeDraft, NewOwner } from '../../../../../libs/contracts';
import { EMPTY_UNIT } from './intake-draft';
import { ownersQuery } from '../../lib/owners-query';
import classes from './new-ticket.module.css';

interface StepProps {
  draft: IntakeDraft;
  onChange: (change: Partial<IntakeDraft>) => void;
}

/** Whose unit it is: the name is looked up while it is typed; an owner the shop knows is one press, a new one is written down. */
export function OwnerStep({ draft, onChange }: StepProps) {
  const found = useQuery(ownersQuery(draft.ownerId === null ? draft.owner.name : ''));
  const set = (change: Partial<NewOwner>) => onChange({ owner: { ...draft.owner, ...change } });
  if (draft.ownerId !== null) {
    return (
      <p className={classes.chosen}>
        <strong>{draft.ownerName}</strong>
        <Button variant="subtle" onClick={() => onChange({ ownerId: null, unitId: null, unit: EMPTY_UNIT })}>
          Someone else
        </Button>
      </p>
    );
  }
  return (
    <>
      <TextInput
        label="Name"
        description="Owners the shop knows turn up below while you type."
        value={draft.owner.name}
        onChange={(event) => set({ name: event.currentTarget.value })}
      />
      <ul className={classes.choices}>
        {(found.data ?? []).slice(0, 8).map((owner) => (
          <li key={owner.id}>
            <Button onClick={() => onChange({ ownerId: owner.id, ownerName: owner.name })}>
              {owner.name} {owner.phone}
            </Button>
          </li>
        ))}
      </ul>
      <div className={classes.fields}>
        <TextInput
          label="Phone"
          type="tel"
          value={draft.owner.phone}
          onChange={(event) => set({ phone: event.currentTarget.value })}
        />
        <TextInput
          label="E-mail"
          type="email"
          value={draft.owner.email}
          onChange={(event) => set({ email: event.currentTarget.value })}
        />
        <TextInput
          label="Address"
          value={draft.owner.address}
          onChange={(event) => set({ address: event.currentTarget.value })}
        />
      </div>
      <Checkbox
        label="The owner agrees to be called when an answer changes"
        checked={draft.owner.consent}
        onChange={(event) => set({ consent: event.currentTarget.checked })}
      />
    </>
  );
}
