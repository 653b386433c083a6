import { parseDay, sayDay, type Day } from '../../day';

/** Why a day cannot be that of the next try, in a sentence; null where it can. No day at all is today. */
export function wrongNextDay(nextOn: string | null, today: Day): string | null {
  const day = nextOn === null ? today : parseDay(nextOn);
  if (day === null || day < today)
    return `The next try cannot be on ${day === null ? nextOn : sayDay(day)}; expected ${sayDay(today)} or later.`;
  return null;
}
