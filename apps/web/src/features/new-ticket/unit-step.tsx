import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { IntakeDraft, LineSummary, UnitRow } from '../../../../../libs/contracts';
import { UnitIdentityFields } from '../../components/unit-identity-fields';
import { ownerUnitsQuery } from './owner-queries';
import classes from './new-ticket.module.css';

interface UnitStepProps {
  draft: IntakeDraft;
  lines: readonly LineSummary[];
  onChange: (change: Partial<IntakeDraft>) => void;
}

/** Which unit it is: one of the owner's, or a new one by its plate. */
export function UnitStep({ draft, lines, onChange }: UnitStepProps) {
  const units = useQuery({ ...ownerUnitsQuery(draft.ownerId ?? 0), enabled: draft.ownerId !== null });
  if (draft.unitId !== null) {
    return (
      <p className={classes.chosen}>
        <strong>{draft.unitName}</strong>
        <Button variant="subtle" onClick={() => onChange({ unitId: null })}>
          Another unit
        </Button>
      </p>
    );
  }
  return (
    <>
      <ul className={classes.choices}>
        {(units.data ?? []).map((unit) => (
          <li key={unit.id}>
            <Button
              disabled={unit.openTicket !== null}
              onClick={() => onChange({ unitId: unit.id, unitName: unitWords(unit) })}
            >
              {unitWords(unit)}
              {unit.openTicket ? `, in the shop already on ${unit.openTicket}` : ''}
            </Button>
          </li>
        ))}
      </ul>
      <UnitIdentityFields lines={lines} value={draft.unit} onChange={(unit) => onChange({ unit })} />
    </>
  );
}

function unitWords({ name, serial }: UnitRow): string {
  return serial ? `${name}, ${serial}` : name;
}
