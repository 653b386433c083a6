import { createHash, randomBytes } from 'node:crypto';
import { MOST_PHOTO_PIXELS, type NewPhoto, type TicketView } from '../../contracts';
import { mayWork } from '../../ticket';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { KeptPicture, PictureProblem, Pictures, Tables, TicketRow } from '../ports/index';
import type { Ports } from '../run';
import { closedHow, noSuchTicket, viewTicket } from '../view-ticket/index';

/** More are a sign of a mistake, or of harm. */
const MOST_PHOTOS = 60;

const PROBLEMS: Readonly<Record<PictureProblem, string>> = {
  'no-picture': 'The file is no picture that is taken here; accepted are JPEG, PNG and WebP.',
  'two-files-in-one': 'The file is a picture and something else besides; send the picture alone.',
  'too-many-points': `The picture is too large; accepted are at most ${MOST_PHOTO_PIXELS / 1_000_000} million points.`,
  broken: 'The picture cannot be read to its end; take it again.',
};

/**
 * Adds a photo to an open ticket, for the whole unit or for one place. What is kept is made anew from the picture's
 * points, under a name of our own; the file's name is never looked at. No version is asked for: a photo adds to a
 * ticket and changes nothing that is there.
 */
export async function takePhoto(
  ports: Ports & { readonly pictures: Pictures },
  actor: Actor,
  { id, sent, ...input }: NewPhoto & { readonly id: number; readonly sent: Uint8Array },
): Promise<Outcome<TicketView>> {
  const { store, pictures } = ports;
  const open = await openTicketAt(store, actor, id);
  if (!open.ok) return open;
  const read = await pictures.remake(sent);
  if (!read.ok) return refused('bad-input', PROBLEMS[read.problem], { field: 'photo' });
  const kept = await store.transaction((tx) => keep(tx, actor, open.value, input, { sent, picture: read.picture }));
  return kept.ok ? viewTicket(ports, actor, id) : kept;
}

/** The ticket, when it is open and at the person's location. */
export async function openTicketAt(tables: Tables, actor: Actor, id: number): Promise<Outcome<TicketRow>> {
  const ticket = await tables.tickets.byId(id);
  if (!ticket || ticket.locationId !== actor.locationId) return noSuchTicket(id);
  const stopped = mayWork({ onHold: false, closed: closedHow({ ticket }) });
  return stopped ? refused('wrong-stage', stopped.sentence) : done(ticket);
}

async function keep(
  tx: Tables,
  actor: Actor,
  ticket: TicketRow,
  input: NewPhoto,
  { sent, picture }: { sent: Uint8Array; picture: KeptPicture },
): Promise<Outcome<null>> {
  const still = await openTicketAt(tx, actor, ticket.id);
  if (!still.ok) return still;
  if ((await tx.photos.ofTicket(ticket.id)).length >= MOST_PHOTOS) {
    return refused('conflict', `The ticket has ${MOST_PHOTOS} photos already; take one away first.`);
  }
  const at = await placeOf(tx, ticket, input);
  if (!at.ok) return at;
  const name = randomBytes(16).toString('hex');
  const { stage, caption } = input;
  const hashes = { sha256: sha256(picture.full), sentSha256: sha256(sent) };
  await tx.photos.insert(ticket.id, { ...picture, ...hashes, ...at.value, name, stage, caption }, actor.id);
  const data = { stage, ...(caption === '' ? {} : { caption }) };
  await tx.tickets.addEvents(ticket.id, [{ kind: 'photo', data, personId: actor.id }]);
  await tx.live.tell('ticket', ticket.id);
  return done(null);
}

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

async function placeOf(
  tx: Tables,
  ticket: TicketRow,
  { position: code, place }: NewPhoto,
): Promise<Outcome<{ positionId: number | null; place: number | null }>> {
  if (code === undefined) return done({ positionId: null, place: null });
  const unit = await tx.units.byId(ticket.unitId);
  const positions = unit?.line ? await tx.catalogue.positionsOf(unit.line.id) : [];
  const position = positions.find((one) => one.code === code);
  if (!position) return refused('bad-input', `The unit has no position '${code}'.`, { field: 'position' });
  if (place !== undefined && place > position.places) {
    return refused('bad-input', `${position.name} has ${position.places} place(s), not ${place}.`, { field: 'place' });
  }
  return done({ positionId: position.id, place: place ?? null });
}
