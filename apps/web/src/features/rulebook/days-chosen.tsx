import { DayField } from '../../components/day-field';
import type { ChosenDays } from '../../lib/rulebook-queries';

interface DaysChosenProps {
  days: ChosenDays;
  onDays: (days: ChosenDays) => void;
}

/** By the papers of which day, and as the shop knew on which day: two clocks, both today unless someone asks. */
export function DaysChosen({ days, onDays }: DaysChosenProps) {
  return (
    <>
      <DayField
        label="By the papers in force on"
        description="Today"
        value={days.inForceOn ?? ''}
        onChange={(value) => onDays({ ...days, inForceOn: value || undefined })}
      />
      <DayField
        label="As the shop knew on"
        description="Today"
        value={days.knownOn ?? ''}
        onChange={(value) => onDays({ ...days, knownOn: value || undefined })}
      />
    </>
  );
}
