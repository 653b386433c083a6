import { civilDateOf, type Day } from '../../day';
import { instantAt, writeInstant } from '../calendar';
import type { DemoLine, DemoPosition, DemoOwner, DemoPick, DemoRecord, DemoTicket, Stage } from '../demo-shop';
import { stages } from '../demo-shop';
import { priceOfTime } from '../../ticket';
import { people, settings, type LocationCode } from '../shop/people';
import { benchFor } from './bench-for';
import { chooseWork, type Work } from './choose-work';
import { picksOf } from './picks-of';
import { recordFound, recordLeft, recordLeftOut, type RecordRoom } from './record-places';
import { eventsOf } from './ticket-events';
import type { Times } from './times';
import type { Visit } from './visits';

export interface TicketRoom extends RecordRoom {
  readonly lines: ReadonlyMap<string, DemoLine>;
  readonly owners: readonly DemoOwner[];
  readonly today: Day;
}

/** One ticket for each visit, in order; what one visit leaves, the next one finds. */
export function makeTickets(visits: readonly Visit[], room: TicketRoom): DemoTicket[] {
  const perYear = new Map<number, number>();
  return visits.map((visit) => {
    const { year } = civilDateOf(visit.opened);
    const n = (perYear.get(year) ?? 0) + 1;
    perYear.set(year, n);
    return makeTicket(visit, `${String(year % 100).padStart(2, '0')}-${String(n).padStart(4, '0')}`, room);
  });
}

function makeTicket(visit: Visit, number: string, room: TicketRoom): DemoTicket {
  const { unit, opened, closed, stage } = visit;
  const owner = room.owners[unit.owner]!;
  const line = room.lines.get(unit.line)!;
  const work = chooseWork(line, positionsOf(visit, line, room), room.chance);
  const times = timesOf(visit, room);
  const records = recordsOf(visit, line, work, times, room);
  const picks = picksOf(visit, work, records, times.picked, room);
  const labourMinutes = minutesOf(visit, number, room);
  const labourMinor = priceOfTime(labourMinutes, settings.money.hourMinor);
  const technician = technicianAt(owner.location, room);
  const ticket: Omit<DemoTicket, 'events'> = {
    number,
    location: owner.location,
    unit: unit.index,
    owner: owner.index,
    bench: stage === 'intake' && closed === null && room.chance.happens(0.5) ? null : benchFor(owner.location, line),
    stage,
    complaint: work.complaint,
    promisedOn: opened + room.chance.whole(6, 14),
    holdReason: visit.onHold
      ? room.chance.oneOf(['waiting for a part', 'owner is asked about the price', 'waiting for a dry day'])
      : null,
    cancelReason: visit.cancelled
      ? room.chance.oneOf(['owner took it back', 'not worth the repair', 'came in by mistake'])
      : null,
    openedAt: times.opened,
    closedAt: times.closed,
    handedOver: closed !== null && !visit.cancelled,
    labourMinutes,
    labourMinor,
    authorisation: authorisationOf(visit, owner, picks, labourMinor, times.picked, room),
    technician,
    safe: has(stage, 'repair') && !visit.cancelled,
    records,
    picks,
  };
  return { ...ticket, events: eventsOf(ticket, times, room.parts) };
}

/** What is about to be repaired has its minutes already, guessed from the look of it: here from its number. */
function minutesOf({ stage, cancelled }: Visit, number: string, { chance }: TicketRoom): number {
  if (cancelled || !has(stage, 'parts-selection')) return 0;
  return stage === 'parts-selection' ? 15 * (2 + (Number(number.slice(-2)) % 9)) : 15 * chance.whole(2, 10);
}

/**
 * The positions a unit has: those for which some paper names a part, which leaves out what belongs to an option it has
 * not got. A few for which no paper speaks are looked at all the same.
 */
function positionsOf({ unit, opened }: Visit, line: DemoLine, { right, chance }: TicketRoom): DemoPosition[] {
  return line.positions.filter(({ code }) => right(unit, code, opened, null) !== null || chance.happens(0.06));
}

function timesOf({ opened, closed }: Visit, { chance }: TicketRoom): Times {
  const start = instantAt(opened, 7.5 + chance.next());
  const end = closed === null ? null : instantAt(closed, 15 + chance.next() * 2);
  const day = closed ?? opened;
  return {
    opened: start,
    found: start + 40 * 60_000,
    picked: instantAt(day, 10 + chance.next()),
    left: instantAt(day, 13 + chance.next()),
    closed: end,
  };
}

function recordsOf(visit: Visit, line: DemoLine, work: Work, times: Times, room: TicketRoom): DemoRecord[] {
  const { unit, stage } = visit;
  if (visit.cancelled || !has(stage, 'inspection')) return [];
  const all = [...work.worked, ...work.lookedAt];
  const looked = stage === 'inspection' ? all.slice(0, 1) : all;
  const found = looked.map((position) => ({ position, records: recordFound(unit, position, times.found, room) }));
  const done = new Set(all.map(({ code }) => code));
  const leftOut = stage === 'inspection' || !writesLeftOut(visit, room) ? [] : recordLeftOut(line, done, times.found);
  const left = has(stage, 'handover') ? leftOf(visit, work, found, times, room) : [];
  return [...found.flatMap(({ records }) => records), ...leftOut, ...left];
}

/** Only this season people began to write down which places they left out, and why. */
function writesLeftOut({ closed }: Visit, { today }: TicketRoom): boolean {
  return closed === null || closed > today - 120;
}

function leftOf(
  visit: Visit,
  work: Work,
  found: readonly { position: Work['worked'][number]; records: DemoRecord[] }[],
  times: Times,
  room: TicketRoom,
): DemoRecord[] {
  const day = visit.closed ?? visit.opened;
  return found
    .filter(({ position }) => work.worked.includes(position))
    .flatMap(({ position, records }) => recordLeft(visit.unit, position, records, times.left, day, room));
}

function authorisationOf(
  visit: Visit,
  owner: DemoOwner,
  picks: readonly DemoPick[],
  labourMinor: number,
  at: number,
  { chance }: TicketRoom,
): DemoTicket['authorisation'] {
  if (visit.cancelled || !has(visit.stage, 'repair')) return null;
  const parts = picks.reduce((sum, { priceMinor, quantity }) => sum + priceMinor * quantity, 0);
  return {
    by: owner.name,
    how: chance.oneOf(['in-person', 'phone', 'phone', 'email']),
    at: writeInstant(at),
    amountMinor: parts + labourMinor,
  };
}

function technicianAt(location: LocationCode, { chance }: TicketRoom): string {
  return chance.oneOf(people.filter((one) => one.role === 'technician' && one.location === location)).login;
}

/** True when a ticket at `stage` has reached `wanted`. */
export function has(stage: Stage, wanted: Stage): boolean {
  return stages.indexOf(stage) >= stages.indexOf(wanted);
}
