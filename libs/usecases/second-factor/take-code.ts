import type { PersonRow, Seals, Tables } from '../ports/index';
import { stepOf } from './one-time-code';
import { hashOfRecovery } from './recovery-codes';

/** What a secret is sealed about: one person's cannot be put in another's place. */
export const aboutSecondFactor = (personId: number): string => `second factor of person ${personId}`;

/** Takes a code of the app, or else a recovery code; false when it is neither, or was taken before. */
export async function takeCode(
  { store, seals, now }: { store: Pick<Tables, 'secondFactors'>; seals: Seals; now: number },
  person: Pick<PersonRow, 'id'>,
  typed: string,
): Promise<boolean> {
  const digits = typed.replaceAll(/\s/g, '');
  if (!/^\d{6}$/.test(digits)) return store.secondFactors.takeRecovery(person.id, hashOfRecovery(typed));
  const factor = await store.secondFactors.find(person.id);
  if (!factor?.on) return false;
  const secret = seals.open(factor.sealed, aboutSecondFactor(person.id));
  if (secret === null) throw new Error(`The second factor of person ${person.id} was sealed with another key.`);
  const step = stepOf(secret, digits, now);
  return step !== null && store.secondFactors.takeStep(person.id, step);
}
