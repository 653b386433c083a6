import { NativeSelect } from '@mantine/core';
import type { FindingsQuery } from '../../../../../libs/contracts';
import { DaysChosen } from './days-chosen';
import { LineChoice } from './line-choice';
import classes from './rulebook.module.css';

const SEVERITIES = [
  { value: '', label: 'Everything' },
  { value: 'error', label: 'Must be mended' },
  { value: 'warning', label: 'Should be looked at' },
  { value: 'note', label: 'Good to know' },
];

interface FindingsFilterProps {
  filter: FindingsQuery;
  onFilter: (filter: FindingsQuery) => void;
}

/** Which findings to show, by which papers. All of it stands in the address. */
export function FindingsFilter({ filter, onFilter }: FindingsFilterProps) {
  const { inForceOn, knownOn } = filter;
  return (
    <div className={classes.filter}>
      <LineChoice line={filter.line} onLine={(line) => onFilter({ ...filter, line })} />
      <NativeSelect
        label="How bad"
        data={SEVERITIES}
        value={filter.severity ?? ''}
        onChange={(event) =>
          onFilter({ ...filter, severity: (event.currentTarget.value || undefined) as FindingsQuery['severity'] })
        }
      />
      <DaysChosen days={{ inForceOn, knownOn }} onDays={(days) => onFilter({ ...filter, ...days })} />
    </div>
  );
}
