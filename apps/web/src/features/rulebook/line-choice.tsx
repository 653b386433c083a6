import { NativeSelect } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { linesQuery } from '../../lib/catalogue-queries';

interface LineChoiceProps {
  line: string | undefined;
  onLine: (line: string | undefined) => void;
}

/** One product line, or all of them. */
export function LineChoice({ line, onLine }: LineChoiceProps) {
  const lines = useQuery(linesQuery);
  const choices = (lines.data ?? []).map(({ code, name, maker }) => ({ value: code, label: `${maker.name} ${name}` }));
  return (
    <NativeSelect
      label="Product line"
      data={[{ value: '', label: 'Every line' }, ...choices]}
      value={line ?? ''}
      onChange={(event) => onLine(event.currentTarget.value || undefined)}
    />
  );
}
