import { day, formatDay, type Day } from '../../day';
import { endOfDayUtc } from '../../fit-rules';
import type { LoadedRulebook } from '../rulebook';

/** By the papers of which day, as known at which instant. */
export interface Clocks {
  readonly inForceOn: Day;
  /** Epoch milliseconds. */
  readonly knownAt: number;
  readonly said: { readonly inForceOn: string; readonly knownOn: string };
}

/** The two clocks of a question, as days `YYYY-MM-DD`; today where left out. Known at the end of the day, or now. */
export function clocksOf(
  { inForceOn, knownOn }: { readonly inForceOn?: string | undefined; readonly knownOn?: string | undefined },
  { today, now }: Pick<LoadedRulebook, 'today' | 'now'>,
): Clocks {
  const by = inForceOn === undefined ? today : day(inForceOn);
  const known = knownOn === undefined ? today : day(knownOn);
  return {
    inForceOn: by,
    knownAt: known >= today ? now : endOfDayUtc(known),
    said: { inForceOn: formatDay(by), knownOn: formatDay(known) },
  };
}
