import type { RecheckView } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { RecheckRow } from '../ports/recheck-store';
import type { Ports } from '../run';

const MOST_SHOWN = 50;

/** Rechecks, newest first. */
export async function listRechecks({ store }: Ports): Promise<readonly RecheckView[]> {
  return (await store.rechecks.newest(MOST_SHOWN)).map(recheckView);
}

/** How far one recheck has come. */
export async function viewRecheck({ store }: Ports, id: number): Promise<Outcome<RecheckView>> {
  const found = await store.rechecks.find(id);
  return found ? done(recheckView(found)) : refused('not-found', 'There is no recheck with this number.');
}

/** The recheck with its pace: installs a second so far, and the seconds it needs for the rest at that pace. */
export function recheckView(row: RecheckRow): RecheckView {
  const { id, cause, bulletin, revision, state, planned, judged, changed, setAside, setAsideWhy } = row;
  const { flagsRaised, flagsCleared, callbacksOpened, callbacksClosed, createdAt, startedAt, finishedAt, now } = row;
  const seconds = startedAt === null ? 0 : Math.max(0.001, ((finishedAt ?? now) - startedAt) / 1_000);
  const perSecond = seconds > 0 && judged > 0 ? judged / seconds : null;
  const left = state === 'running' && perSecond !== null ? Math.max(0, planned - judged) / perSecond : null;
  const instant = (at: number | null) => (at === null ? null : new Date(at).toISOString());
  return {
    ...{ id, cause, bulletin, revision, state, planned, judged, changed },
    ...{ flagsRaised, flagsCleared, callbacksOpened, callbacksClosed, setAside, setAsideWhy: [...setAsideWhy] },
    createdAt: new Date(createdAt).toISOString(),
    startedAt: instant(startedAt),
    finishedAt: instant(finishedAt),
    perSecond,
    secondsLeft: left,
  };
}
