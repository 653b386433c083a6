import { refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/index';

/** Null when the bench belongs to the location, or is none; else why not. */
export async function refuseOtherBench(
  { benches }: Pick<Tables, 'benches'>,
  benchId: number | null,
  locationId: number,
  field: string,
): Promise<Outcome<never> | null> {
  if (benchId === null || (await benches.at(locationId)).some(({ id }) => id === benchId)) return null;
  return refused('bad-input', `There is no bench ${benchId} here.`, { field });
}

/** Holds the lists named; null names none. */
export function holdLists({ benches }: Pick<Tables, 'benches'>, ids: readonly (number | null)[]): Promise<void> {
  return benches.lock([...new Set(ids.filter((id) => id !== null))]);
}
