import type { Invited, NewPerson } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';
import { invite } from './invite';
import { personView } from './list-people';
import { personAsSeen, raiseVersion, type OnPerson } from './person-as-seen';

/** Adds a person, who sets a password with the one-time link that is answered. */
export async function addPerson({ store, clock }: Ports, _actor: Actor, input: NewPerson): Promise<Outcome<Invited>> {
  return store.transaction(async (tx) => {
    const wrong = await strangeLocation(tx, input.locationId);
    if (wrong) return wrong;
    const id = await tx.people.insert(input);
    if (id === null) return refused('conflict', `The sign-in name '${input.login}' is taken.`, { field: 'login' });
    return done(await invitedTo(tx, id, clock.now()));
  });
}

/** Makes a new one-time link for somebody who forgot the password or let the first link pass. */
export async function renewLink({ store, clock }: Ports, _actor: Actor, on: OnPerson): Promise<Outcome<Invited>> {
  return store.transaction(async (tx) => {
    const seen = await personAsSeen(tx, on, clock.now());
    if (!seen.ok) return seen;
    const { id, active, name } = seen.value;
    if (!active) return refused('already-done', `${name} does not work here any more.`);
    await raiseVersion(tx, on);
    return done(await invitedTo(tx, id, clock.now()));
  });
}

/** A refusal when the shop has no such location. */
export async function strangeLocation(tx: Tables, id: number): Promise<Outcome<never> | null> {
  const known = (await tx.people.locations()).some((location) => location.id === id);
  return known ? null : refused('bad-input', `There is no location ${id}.`, { field: 'locationId' });
}

async function invitedTo(tx: Tables, id: number, now: number): Promise<Invited> {
  const { link, until } = await invite(tx, id, now);
  const person = (await tx.people.byId(id))!;
  return { person: personView(person, now), link, until: new Date(until).toISOString() };
}
