import { NativeSelect, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { lineQuery } from '../../lib/catalogue-queries';
import { LineChoice } from './line-choice';
import classes from './rulebook.module.css';

export interface RulesFilterValue {
  line?: string;
  position?: string;
  q?: string;
}

interface RulesFilterProps {
  filter: RulesFilterValue;
  onFilter: (filter: RulesFilterValue) => void;
}

/** Which rules to show: line, position of that line, words of the sentence. All of it stands in the address. */
export function RulesFilter({ filter, onFilter }: RulesFilterProps) {
  const line = useQuery(lineQuery(filter.line ?? ''));
  const positions = (line.data?.positions ?? []).map(({ code, name }) => ({ value: code, label: name }));
  return (
    <div className={classes.filter}>
      <LineChoice line={filter.line} onLine={(chosen) => onFilter({ q: filter.q, line: chosen })} />
      <NativeSelect
        label="Position"
        disabled={!filter.line}
        data={[{ value: '', label: 'Every position' }, ...positions]}
        value={filter.position ?? ''}
        onChange={(event) => onFilter({ ...filter, position: event.currentTarget.value || undefined })}
      />
      <TextInput
        type="search"
        label="Part number, paper or word"
        value={filter.q ?? ''}
        onChange={(event) => onFilter({ ...filter, q: event.currentTarget.value || undefined })}
      />
    </div>
  );
}
