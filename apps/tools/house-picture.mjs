/**
 * Draws the house from the import law: which room may open a door to which. `--write` puts the picture into
 * DEVELOPERS.md between its two marks; without it, the picture is printed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const { ROOMS } = createRequire(import.meta.url)('../../.dependency-cruiser.cjs');
const GUIDE = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url));
const [BEGIN, END] = ['<!-- house: begin -->', '<!-- house: end -->'];

/** Doors that follow from other doors are left out, so that the picture shows the way and not every shortcut. */
function directDoors(room) {
  const reachable = (from, seen = new Set()) => {
    for (const door of ROOMS[from] ?? []) if (!seen.has(door)) reachable(door, seen.add(door));
    return seen;
  };
  const doors = ROOMS[room];
  return doors.filter((door) => !doors.some((other) => other !== door && reachable(other).has(door)));
}

export function housePicture() {
  const name = (room) => room.replace(/[^a-z]/g, '_');
  const rooms = Object.keys(ROOMS);
  const lines = rooms.flatMap((room) => directDoors(room).map((door) => `  ${name(room)} --> ${name(door)}`));
  const boxes = rooms.map((room) => `  ${name(room)}["${room}"]`);
  return ['```mermaid', 'flowchart TD', ...boxes, ...lines, '```'].join('\n');
}

const guide = readFileSync(GUIDE, 'utf8');
const [before, rest] = guide.split(BEGIN);
const after = rest?.split(END)[1];
if (after === undefined) throw new Error(`DEVELOPERS.md has lost its marks ${BEGIN} and ${END}`);
const drawn = `${before}${BEGIN}\n\n${housePicture()}\n\n${END}${after}`;
if (process.argv.includes('--write')) writeFileSync(GUIDE, drawn);
else if (process.argv.includes('--check') && drawn !== guide) {
  console.error(
    'The picture of the house in DEVELOPERS.md is not the import law: run node apps/tools/house-picture.mjs --write',
  );
  process.exit(1);
} else console.log(housePicture());
