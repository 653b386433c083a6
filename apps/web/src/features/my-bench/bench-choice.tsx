import { NativeSelect } from '@mantine/core';
import type { MyBench } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useChooseBench } from './my-bench-query';

/** At which bench one works; it is kept for the next day too. */
export function BenchChoice({ mine }: { mine: MyBench }) {
  const act = useChooseBench();
  return (
    <>
      <NativeSelect
        label="The bench I work at"
        disabled={act.isPending}
        value={mine.bench?.id ?? ''}
        onChange={({ currentTarget: { value } }) => act.mutate(value === '' ? null : Number(value))}
      >
        <option value="">none yet</option>
        {mine.benches.map(({ id, code, name }) => (
          <option key={id} value={id}>{`${code} · ${name}`}</option>
        ))}
      </NativeSelect>
      <ActProblem error={act.error} />
    </>
  );
}
