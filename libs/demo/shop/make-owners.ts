import type { DemoOwner } from '../demo-shop';
import type { Chance } from '../prng';
import { familyNames, givenNames, streets, towns } from './names';

/** Owners with invented names; phone numbers hold only figures that no exchange gives out first. */
export function makeOwners(count: number, chance: Chance): DemoOwner[] {
  return Array.from({ length: count }, (_, index) => ownerOf(index, chance));
}

function ownerOf(index: number, chance: Chance): DemoOwner {
  const given = chance.oneOf(givenNames);
  const family = chance.oneOf(familyNames);
  return {
    index,
    location: chance.happens(0.55) ? 'MILL' : 'QUAY',
    name: `${given} ${family}`,
    phone: `0000 ${String(chance.whole(0, 999)).padStart(3, '0')} ${String(chance.whole(0, 9999)).padStart(4, '0')}`,
    email: chance.happens(0.7) ? `${plain(given)}.${plain(family)}${index}@mail.example` : '',
    address: `${chance.whole(1, 98)} ${chance.oneOf(streets)}, ${chance.oneOf(towns)}`,
    consent: chance.happens(0.88),
  };
}

function plain(name: string): string {
  return name.toLowerCase().replace(/[^a-z]/g, '');
}
