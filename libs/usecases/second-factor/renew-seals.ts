import type { Seals, Tables } from '../ports/index';
import { aboutSecondFactor } from './take-code';

/**
 * Seals every second factor with the key of today that an earlier key still seals; answers how many, and whose neither
 * key opens: those can only come in with a recovery code, or be reset by an administrator.
 */
export async function renewSeals(
  { secondFactors }: Pick<Tables, 'secondFactors'>,
  seals: Seals,
): Promise<{ readonly renewed: number; readonly lost: readonly number[] }> {
  let renewed = 0;
  const lost: number[] = [];
  for (const { personId, sealed } of await secondFactors.sealed()) {
    const about = aboutSecondFactor(personId);
    const fresh = seals.renew(sealed, about);
    if (fresh !== null && (await secondFactors.reseal(personId, sealed, fresh))) renewed++;
    else if (seals.open(sealed, about) === null) lost.push(personId);
  }
  return { renewed, lost };
}
