import { FIRST_LOGIN, firstAdministrator, type Ports } from '../../../libs/usecases';

/** What to say at the start of a shop into which nobody can sign in yet; nothing otherwise. */
export async function howToSignInFirst(ports: Ports, address: string): Promise<readonly string[]> {
  const first = await firstAdministrator(ports);
  if (!first) return [];
  return [
    `Nobody can sign in to this shop yet. Set the password of '${FIRST_LOGIN}' here: ${address}${first.link}`,
    'The link works once, for 24 hours; starting again makes a new one.',
  ];
}
