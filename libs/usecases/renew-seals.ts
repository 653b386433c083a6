import type { Seals, Tables } from './ports/index';
import { aboutSecondFactor } from './second-factor/take-code';
import { ABOUT_MAIL_SERVER } from './set-up-mail/mail-in-force';
import { aboutWebhook } from './tell-programs/deliver-next-event';

/** What became of the seals of one kind. */
export interface RenewedSeals {
  /** How many are sealed with the key of today that were not before. */
  readonly renewed: number;
  /** Those that neither key opens. */
  readonly lost: readonly number[];
}

interface Sealed {
  readonly id: number;
  readonly sealed: string;
}

/**
 * Seals everything with the key of today that an earlier key still seals. A second factor (by person) that neither key
 * opens lets its person in by a recovery code alone, or is reset; such a webhook is added anew, and the password of the
 * mail server (of which there is one, number 1) is typed anew.
 */
export async function renewSeals(
  { secondFactors, webhooks, mailServer }: Pick<Tables, 'secondFactors' | 'webhooks' | 'mailServer'>,
  seals: Seals,
): Promise<{
  readonly secondFactors: RenewedSeals;
  readonly webhooks: RenewedSeals;
  readonly mailServer: RenewedSeals;
}> {
  const people = (await secondFactors.sealed()).map(({ personId, sealed }) => ({ id: personId, sealed }));
  const { server } = await mailServer.read();
  const passwords = server?.sealed ? [{ id: 1, sealed: server.sealed }] : [];
  return {
    secondFactors: await renewed(people, aboutSecondFactor, seals, (...one) => secondFactors.reseal(...one)),
    mailServer: await renewed(
      passwords,
      () => ABOUT_MAIL_SERVER,
      seals,
      (_, ...one) => mailServer.reseal(...one),
    ),
    webhooks: await renewed(await webhooks.sealed(), aboutWebhook, seals, (...one) => webhooks.reseal(...one)),
  };
}

async function renewed(
  all: readonly Sealed[],
  aboutOf: (id: number) => string,
  seals: Seals,
  reseal: (id: number, was: string, sealed: string) => Promise<boolean>,
): Promise<RenewedSeals> {
  let count = 0;
  const lost: number[] = [];
  for (const { id, sealed } of all) {
    const fresh = seals.renew(sealed, aboutOf(id));
    if (fresh !== null && (await reseal(id, sealed, fresh))) count++;
    else if (seals.open(sealed, aboutOf(id)) === null) lost.push(id);
  }
  return { renewed: count, lost };
}
