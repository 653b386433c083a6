import { LONGEST_SPAN_DAYS, type Figures, type FiguresQuery } from '../../contracts';
import { civilDateOf, dayOf, formatDay, parseDay, sayDay, type Day } from '../../day';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { bucketsOf } from './buckets';

/** Longer lists say less. */
const MOST_PARTS = 12;

/**
 * How the shop did in a span of days, within the person's sight; the twelve months up to today where none is given.
 * Refused where the span is empty, or longer than `LONGEST_SPAN_DAYS`.
 */
export async function viewFigures(
  { store, clock }: Ports,
  actor: Actor,
  query: FiguresQuery,
): Promise<Outcome<Figures>> {
  const { from, to } = spanOf(query, clock.today());
  if (from >= to)
    return refused('bad-input', `The days end on ${sayDay(to)}, before they begin; 'to' must be later than 'from'.`, {
      field: 'to',
    });
  if (to - from > LONGEST_SPAN_DAYS)
    return refused('bad-input', `From ${sayDay(from)} to ${sayDay(to)} is longer than ${LONGEST_SPAN_DAYS} days.`, {
      field: 'from',
    });
  const scope = { from, to, locationId: sightOf(actor) };
  return store.transaction(async ({ figures }) =>
    done({
      from: formatDay(from),
      to: formatDay(to),
      byBench: await figures.flaggedByBench(scope),
      byPart: await figures.flaggedByPart(scope, MOST_PARTS),
      callbacks: await figures.callbacks(bucketsOf(from, to), scope.locationId),
      stages: await figures.timeInStage(scope),
      unsettled: await figures.unsettledBuildDates(scope),
      wrongParts: await figures.wrongParts(scope, MOST_PARTS),
    }),
  );
}

/** There is no way to write a day before it. */
const FIRST_DAY = dayOf(1, 1, 1);

function spanOf(query: FiguresQuery, today: Day): { from: Day; to: Day } {
  const to = (query.to === undefined ? null : parseDay(query.to)) ?? today + 1;
  const { year, month, dayOfMonth } = civilDateOf(to);
  const named = query.from === undefined ? null : parseDay(query.from);
  return { from: named ?? Math.max(FIRST_DAY, dayOf(year - 1, month, dayOfMonth)), to };
}
