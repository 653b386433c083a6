import type { CallbackView, ContactWay, WrittenToOwners } from '../../contracts';
import { whyNotWritten } from '../../papers';
import { sightOf, type Actor } from '../actor';
import { callbackView } from '../list-callbacks/list-callbacks';
import type { Tables } from '../ports/store';

export interface Chosen {
  readonly may: readonly CallbackView[];
  readonly leftOut: WrittenToOwners['leftOut'];
}

/** Of the callbacks named, those within the person's sight whose owner may be written to; why not, for each other. */
export async function chooseOwners(
  { callbacks }: Pick<Tables, 'callbacks'>,
  actor: Actor,
  ids: readonly number[],
  way: Exclude<ContactWay, 'phone'>,
): Promise<Chosen> {
  const found = (await callbacks.some([...new Set(ids)], sightOf(actor))).map(callbackView);
  const looked = found.map((callback) => ({ callback, why: whyNotWritten(callback, way) }));
  return {
    may: looked.flatMap(({ callback, why }) => (why === null ? [callback] : [])),
    leftOut: looked.flatMap(({ callback, why }) => (why === null ? [] : [{ ...named(callback), why }])),
  };
}

export const named = ({ id, owner }: CallbackView) => ({ id, name: owner.name });
