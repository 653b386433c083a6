import sharp from 'sharp';
import type { Actor, PositionRow, Ports } from '../usecases';
import { takePhoto } from '../usecases';
import { pictures } from './pictures';

const STAGES = ['inspection', 'repair', 'handover'];
/** Tickets of each stage that get photos. */
const EACH = 2;

/** Gives some open tickets of the demo shop photos: drawings of their machine with one place marked. */
export async function addDemoPhotos(ports: Ports): Promise<void> {
  const people = await ports.store.sessions.people();
  for (const { id, name, role, location } of people.filter((one) => one.role === 'technician')) {
    const actor: Actor = { id, name, role, locationId: location.id };
    const board = await ports.store.tickets.board({ locationId: location.id, today: '9999-12-31' });
    const chosen = STAGES.flatMap((stage) => board.filter((ticket) => ticket.stage === stage).slice(0, EACH));
    const bare = chosen.filter((_, index) => index % 2 === id % 2);
    for (const ticket of bare) await photograph(ports, actor, ticket.id);
  }
}

async function photograph(ports: Ports, actor: Actor, id: number): Promise<void> {
  const ticket = await ports.store.tickets.byId(id);
  const unit = ticket && (await ports.store.units.byId(ticket.unitId));
  if (!unit?.line) return;
  const [first] = await ports.store.catalogue.positionsOf(unit.line.id);
  const take = async (more: { stage: 'intake' | 'inspection'; caption: string; position?: string; place?: number }) => {
    const sent = await drawn(unit.line!.sketch, more.position === undefined ? null : first!);
    await takePhoto({ ...ports, pictures }, actor, { ...more, id, sent });
  };
  await take({ stage: 'intake', caption: 'As it came in' });
  if (first) await take({ stage: 'inspection', caption: 'As found', position: first.code, place: 1 });
}

/** The outline of the machine, drawn large, with a ring around one position. */
function drawn(outline: string, marked: PositionRow | null): Promise<Buffer> {
  const ring = marked
    ? `<circle cx="${marked.sketchX}" cy="${marked.sketchY}" r="5" fill="none" stroke="#a23f00" stroke-width="1.2"/>`
    : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-8 -8 116 76" width="1160" height="760">
    <rect x="-8" y="-8" width="116" height="76" fill="#cfc6b4"/><rect x="-8" y="52" width="116" height="16" fill="#8a8172"/>
    <path d="${outline}" fill="#b9502b" stroke="#1c1a17" stroke-width="1"/>${ring}</svg>`;
  return sharp(Buffer.from(svg)).jpeg({ quality: 85 }).toBuffer();
}
