import type { OpenTicket, TicketView } from '../../contracts';
import { formatDay } from '../../day';
import type { Actor } from '../actor';
import { evidenceOf, inferUnit, preparedShop } from '../build-days/index';
import { resolveIdentity } from '../identify-unit/index';
import { judgeUnit } from '../judge-installs';
import { sayErasedStays } from '../manage-owners/index';
import { done, refused, type Outcome } from '../outcome';
import type { EvidenceRow, Tables } from '../ports/index';
import { holdLists, refuseOtherBench } from '../plan-benches/put-on-list';
import { loadRulebook } from '../rulebook';
import type { Ports } from '../run';
import { viewTicket } from '../view-ticket/index';

/** Opens a ticket for a unit that came in: owner and unit each known by id or new, in one transaction. */
export async function openTicket(ports: Ports, actor: Actor, input: OpenTicket): Promise<Outcome<TicketView>> {
  const opened = await ports.store.transaction(async (tx) => {
    // Serial schemes do not change between reading a new unit's build days and keeping them.
    await tx.rulebook.share();
    const known = input.unitId === undefined ? null : await knownUnit(tx, input.unitId, actor);
    if (known && !known.ok) return known;
    const owner = await ownerOf(tx, actor, input, known?.value.ownerId);
    if (!owner.ok) return owner;
    const unit = known ? done(known.value.unitId) : await newUnit(ports, tx, actor, input, owner.value);
    if (!unit.ok) return unit;
    return insertTicket(ports, tx, actor, input, { ownerId: owner.value, unitId: unit.value });
  });
  return opened.ok ? viewTicket(ports, actor, opened.value) : opened;
}

async function knownUnit(tx: Tables, unitId: number, actor: Actor) {
  const unit = await tx.units.byId(unitId);
  if (!unit || !(await tx.units.isAt(unitId, actor.locationId)))
    return bad('unitId', `There is no unit ${unitId} here.`);
  return done({ unitId, ownerId: unit.owner.id });
}

/** A known unit may come in under another owner: machines are sold. */
async function ownerOf(tx: Tables, actor: Actor, input: OpenTicket, unitsOwner?: number): Promise<Outcome<number>> {
  if (input.ownerId !== undefined && input.owner) return bad('owner', 'Give ownerId or a new owner, not both.');
  if (input.owner) return done(await tx.owners.insert({ ...input.owner, locationId: actor.locationId }));
  const id = input.ownerId ?? unitsOwner;
  if (id === undefined) return bad('ownerId', 'Give ownerId or a new owner.');
  if (!(await tx.owners.byId(id, actor.locationId))) return bad('ownerId', `There is no owner ${id} here.`);
  return (await tx.owners.isErased(id)) ? bad('ownerId', sayErasedStays(id)) : done(id);
}

async function newUnit({ clock }: Ports, tx: Tables, actor: Actor, { unit }: OpenTicket, ownerId: number) {
  if (!unit) return bad('unitId', 'Give unitId or a new unit.');
  const resolved = await resolveIdentity(tx, unit);
  if (!resolved.ok) return resolved;
  const { columns, line } = resolved.value;
  const firstSeen: EvidenceRow = { id: 0, kind: 'first-seen', data: { on: formatDay(clock.today()) }, setAside: null };
  const about = { serial: columns.serial, line, maker: line?.maker ?? null };
  const shop = await preparedShop(tx);
  const { columns: built } = inferUnit(about, evidenceOf(about, [firstSeen]), shop, clock.today());
  const unitId = await tx.units.insert({ ...columns, ...built, ownerId });
  await tx.units.insertEvidence(unitId, firstSeen.kind, firstSeen.data, actor.id);
  return done(unitId);
}

async function insertTicket(
  { clock }: Ports,
  tx: Tables,
  actor: Actor,
  { benchId, complaint, promisedOn }: OpenTicket,
  { ownerId, unitId }: { ownerId: number; unitId: number },
): Promise<Outcome<number>> {
  const elsewhere = await refuseOtherBench(tx, benchId, actor.locationId, 'benchId');
  if (elsewhere) return elsewhere;
  await loadRulebook(tx, clock);
  await tx.units.lock(unitId);
  await tx.units.setOwner(unitId, ownerId);
  const id = await tx.tickets.insert({
    locationId: actor.locationId,
    unitId,
    ownerId,
    complaint,
    promisedOn,
    at: clock.now(),
  });
  if (id === null) {
    const open = await tx.units.openTicket(unitId);
    return refused('conflict', `The unit is in the shop already, on ticket ${open?.number ?? ''}.`, { current: open });
  }
  await holdLists(tx, [benchId]);
  await tx.benches.put(id, benchId, null);
  await tx.tickets.addEvents(id, [{ kind: 'opened', data: { complaint }, personId: actor.id }]);
  await judgeUnit(tx, clock, unitId);
  await tx.live.tell('ticket', id);
  return done(id);
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
