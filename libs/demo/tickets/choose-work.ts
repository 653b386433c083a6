import type { DemoLine, DemoPosition } from '../demo-shop';
import type { Chance } from '../prng';

/** What a ticket is about: positions worked on, positions only looked at, and what the owner said. */
export interface Work {
  readonly worked: readonly DemoPosition[];
  readonly lookedAt: readonly DemoPosition[];
  readonly complaint: string;
}

const COMPLAINTS: readonly (readonly [part: RegExp, sentence: string])[] = [
  [/AUG-PIN/, 'Engine runs, auger stands still on one side.'],
  [/IMP-PIN/, 'Throws no snow, impeller turns by hand.'],
  [/PIN|BLT$/, 'Drive lets go under load.'],
  [/BLT|CHN/, 'Slips and smells of rubber.'],
  [/KNIFE|KN-|BLADE|GUARD|BLD/, 'Cuts badly and shakes.'],
  [/SEAL|FLT|GSK/, 'Leaves oil on the floor.'],
  [/BRG|BSH|CROSS/, 'Rattles and gets hot.'],
  [/TINE/, 'Hops instead of digging.'],
];

/**
 * Chooses the work of one visit among the positions the unit has. Snow throwers come mostly for their auger pins.
 */
export function chooseWork(line: DemoLine, positions: readonly DemoPosition[], chance: Chance): Work {
  const main = chooseMain(line, positions, chance);
  const others = positions.filter((position) => position !== main);
  const worked = [main];
  if (chance.happens(main.placeNames.length > 3 ? 0.12 : 0.5)) worked.push(chance.oneOf(others));
  const rest = others.filter((position) => !worked.includes(position));
  return {
    worked,
    lookedAt: chance.happens(0.18) ? [chance.oneOf(rest)] : [],
    complaint: chance.happens(0.2) ? 'Yearly service.' : complaintOf(main.code),
  };
}

function chooseMain({ kind }: DemoLine, positions: readonly DemoPosition[], chance: Chance): DemoPosition {
  const pins = positions.filter(({ joint }) => joint !== null);
  if (kind === 'snow thrower') return chance.happens(0.86) ? positions[0]! : chance.oneOf(positions);
  return pins.length > 0 && chance.happens(0.4) ? chance.oneOf(pins) : chance.oneOf(positions);
}

function complaintOf(code: string): string {
  return COMPLAINTS.find(([part]) => part.test(code))?.[1] ?? 'Does not work as it should.';
}
