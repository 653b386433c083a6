import type { Role } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { FoundElsewhere, PersonRecord, Tables } from '../ports/index';
import type { Ports } from '../run';
import type { SessionRules } from '../sign-in/session-rules';
import { enter, type CodeAsked, type SignedIn } from '../sign-in/sign-in';

type All = Ports & { readonly rules: SessionRules };

/**
 * Lets in whom another provider vouches for: the person bound to that account, else the one whose e-mail address an
 * administrator wrote down, when the provider has verified it; that binds the account for good. Nobody is added
 * unasked: only where `newPeople` names a role, and only with a verified address. Whoever has a second factor here is
 * asked for it all the same, because what the provider asked for is not known.
 */
export async function letInFromElsewhere(
  all: All,
  found: FoundElsewhere,
  newPeople: Role | undefined,
): Promise<Outcome<SignedIn | CodeAsked>> {
  const person = await all.store.transaction(async (tx) => {
    await tx.people.alone();
    const id = (await knownAs(tx, found)) ?? (newPeople === undefined ? null : await added(tx, found, newPeople));
    return id === null ? null : tx.people.byId(id);
  });
  if (!person?.active) return nobody();
  return done(await enter(all, person satisfies PersonRecord));
}

async function knownAs(tx: Tables, { issuer, subject, email }: FoundElsewhere): Promise<number | null> {
  const bound = await tx.outsideIdentities.personOf(issuer, subject);
  if (bound !== null || email === null) return bound;
  return tx.outsideIdentities.bind({ issuer, subject, email });
}

async function added(tx: Tables, { issuer, subject, email, name }: FoundElsewhere, role: Role): Promise<number | null> {
  const login = email === null ? '' : email.replace(/@.*$/, '').replaceAll(/[^a-z0-9._-]/g, '');
  const [location] = await tx.people.locations();
  if (email === null || !/^[a-z0-9][a-z0-9._-]{0,38}[a-z0-9]$/.test(login) || !location) return null;
  const id = await tx.people.insert({
    login,
    name: name?.trim().slice(0, 100) || login,
    role,
    locationId: location.id,
  });
  if (id === null || !(await tx.outsideIdentities.put(id, email))) return null;
  return tx.outsideIdentities.bind({ issuer, subject, email });
}

const nobody = () =>
  refused('not-allowed', 'That account belongs to nobody here; ask an administrator to write down its e-mail address.');
