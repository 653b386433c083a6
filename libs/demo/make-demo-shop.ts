import { prepareShop, PUBLISHED_STANDARD_EDITIONS } from '../build-date';
import type { Day } from '../day';
import { usualStanding } from '../fit-rules';
import { calendarFor } from './calendar';
import type { DemoShop } from './demo-shop';
import { allLines } from './lines/all-lines';
import { makers } from './makers/makers';
import { serialSchemes } from './makers/serial-schemes';
import { makeChance } from './prng';
import { lineOf, partsOfLine } from './rulebook/catalogue';
import { drafts } from './rulebook/drafts';
import { papersOfLine } from './rulebook/papers-of-line';
import { rulesOfLine } from './rulebook/rules-of-line';
import { supersessions } from './rulebook/supersessions';
import { whatIsRight } from './rulebook/what-is-right';
import { makeShelf } from './shelf/make-shelf';
import { makeOwners } from './shop/make-owners';
import { benches, locations, people, settings } from './shop/people';
import { HeldParts } from './tickets/held-parts';
import { makeTickets } from './tickets/make-tickets';
import { planVisits } from './tickets/visits';
import { makeUnits } from './units/make-units';

const OWNERS = 900;

/**
 * A whole repair shop of our own invention, the same for the same seed and day. `today` is the day the shop stands at:
 * its papers, units and tickets reach up to that day.
 */
export function makeDemoShop(seed: number, today: Day): DemoShop {
  const calendar = calendarFor(today);
  const chance = makeChance(seed);
  const schemes = serialSchemes(calendar);
  const rooms = allLines(calendar);
  const reader = prepareShop({ serialSchemes: [...schemes], standardEditions: [] });
  const shelf = { calendar, schemes, reader };
  const lines = rooms.map(lineOf);
  const parts = rooms.flatMap(partsOfLine);
  const published = rooms.flatMap((room) => papersOfLine(room, calendar));
  const rules = rooms.flatMap((room) => rulesOfLine(room, shelf));
  const right = whatIsRight(rules, published);
  const owners = makeOwners(OWNERS, chance);
  const units = makeUnits(rooms, { ...shelf, owners }, chance);
  const tickets = makeTickets(planVisits(units, calendar, chance), {
    lines: new Map(lines.map((line) => [line.code, line])),
    parts: new Map(parts.map((part) => [part.key, part])),
    owners,
    right,
    held: new HeldParts(right, chance),
    today,
    chance,
  });
  return {
    seed,
    today,
    locations,
    benches,
    people,
    settings: { ...settings, standing: usualStanding },
    makers,
    schemes,
    editions: PUBLISHED_STANDARD_EDITIONS,
    lines,
    parts,
    supersessions: supersessions(calendar),
    sources: [...published, ...drafts(rooms, shelf)],
    rules,
    owners,
    units,
    tickets,
    shelf: makeShelf(seed, lines, parts, tickets),
  };
}
