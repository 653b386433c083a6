import { Button, Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { promisedFilter, type Bench, type Board } from '../../../../../libs/contracts';
import type { BoardFilter } from './get-board';
import classes from './board.module.css';

interface BoardFilterBarProps {
  benches: readonly Bench[];
  owners: Board['owners'];
  filter: BoardFilter;
  onFilter: (filter: BoardFilter) => void;
}

const DAYS = [
  { value: '', label: 'Any day' },
  { value: 'today', label: 'Promised for today' },
  { value: 'late', label: 'Late' },
  { value: 'week', label: 'In the next 7 days' },
  { value: 'none', label: 'No day promised' },
];

/** Bench, owner, promised day, flagged and text; every choice stands in the address, so that a bench can keep its own board. */
export function BoardFilterBar({ benches, owners, filter, onFilter }: BoardFilterBarProps) {
  const choices = [
    { value: '', label: 'Every bench' },
    ...benches.map((bench) => ({ value: String(bench.id), label: `${bench.code} · ${bench.name}` })),
  ];
  const isListed = filter.owner === undefined || owners.some(({ id }) => String(id) === filter.owner);
  return (
    <div className={classes.filter}>
      <NativeSelect
        aria-label="Bench"
        data={choices}
        value={filter.bench ?? ''}
        onChange={(event) => onFilter({ ...filter, bench: event.currentTarget.value || undefined })}
      />
      <NativeSelect
        aria-label="Owner"
        data={[
          { value: '', label: 'Every owner' },
          ...owners.map(({ id, name }) => ({ value: String(id), label: name })),
          ...(isListed ? [] : [{ value: filter.owner!, label: 'An owner without an open ticket' }]),
        ]}
        value={filter.owner ?? ''}
        onChange={(event) => onFilter({ ...filter, owner: event.currentTarget.value || undefined })}
      />
      <NativeSelect
        aria-label="Promised day"
        data={DAYS}
        value={filter.promised ?? ''}
        onChange={({ currentTarget: { value } }) =>
          onFilter({ ...filter, promised: promisedFilter.options.find((one) => one === value) })
        }
      />
      <TextInput
        type="search"
        aria-label="Owner, unit or tag"
        placeholder="Owner, unit, tag"
        value={filter.q ?? ''}
        onChange={(event) => onFilter({ ...filter, q: event.currentTarget.value || undefined })}
      />
      <Checkbox
        label="Flagged only"
        checked={filter.flagged === 'yes'}
        onChange={(event) => onFilter({ ...filter, flagged: event.currentTarget.checked ? 'yes' : undefined })}
      />
      <Button component={Link} to="/new-ticket" variant="filled" className={classes.new}>
        Take a unit in
      </Button>
    </div>
  );
}
