import { AsyncLocalStorage } from 'node:async_hooks';
import type { Db } from '../db';

/** Whose eyes the database looks with: a location's id, or every location's. Nothing is seen without. */
export type Sight = number | 'all';

/** Who asks for what is done: the database writes it beside every change, and shows no more than that person may see. */
export interface Acting {
  /** Null for the program itself. */
  readonly personId: number | null;
  readonly sight: Sight;
  /** The token of the program that asks in that person's name; left out where the person asks. */
  readonly tokenId?: number;
}

const acting = new AsyncLocalStorage<Acting>();

/** Runs the work, and all it waits for, in the name of that person. Work outside of it is nobody's and sees nothing. */
export function actingAs<T>(who: Acting, work: () => T): T {
  return acting.run(who, () => begun(work()));
}

/** Runs the work as the program's own, which looks after every location: rechecks, figures, the trail's head. */
export function asProgram<T>(work: () => T): T {
  return actingAs({ personId: null, sight: 'all' }, work);
}

/** Runs the work in nobody's name: what is asked for several people at once, and stands behind no wall. */
export function asNobody<T>(work: () => T): T {
  return acting.exit(() => begun(work()));
}

/** The client's questions are asked only once somebody waits for them; here that is while it is known who acts. */
function begun<T>(answer: T): T {
  if (!(answer instanceof Object) || !('then' in answer) || typeof answer.then !== 'function') return answer;
  return Promise.resolve(answer) as T;
}

/** The sight of the work under way as the setting `revright.sight` takes it; `otherwise` where nobody was named. */
export function sightNow(otherwise: Sight | 'nothing'): string {
  const sight = acting.getStore()?.sight ?? otherwise;
  return sight === 'nothing' ? '' : String(sight);
}

/** The transaction, once the database has been told for it who acts; it forgets at the transaction's end. */
export async function actorTold(db: Db, otherwise: Sight | 'nothing'): Promise<Db> {
  const { personId = null, tokenId = null } = acting.getStore() ?? {};
  await db.$executeRaw`
    SELECT set_config('revright.person', ${personId === null ? '' : String(personId)}, true),
           set_config('revright.token', ${tokenId === null ? '' : String(tokenId)}, true),
           set_config('revright.sight', ${sightNow(otherwise)}, true)`;
  return db;
}
