import { dayOfInstant } from '../../../libs/day';
import type { Clock } from '../../../libs/usecases';

/** The machine's clock, with today as the shop's time zone has it. */
export function shopClock(timeZone: string): Clock {
  return { now: () => Date.now(), today: () => dayOfInstant(new Date(), timeZone) };
}
