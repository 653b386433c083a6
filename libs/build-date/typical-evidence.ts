import { civilDateOf, formatDay, type Day } from '../day';
import type { Evidence, EvidenceKind } from './evidence';
import { modelYearCharacter } from './model-year';
import type { PreparedShop } from './prepare-shop';
import type { SerialOwner } from './read-serial';
import { vinCheckDigit } from './vin-rules';
import { writeSerial } from './write-serial';
import { tyreCodeOf } from './tyre-rules';

/** How long parts lie before they are built in, and machines before they are sold (common practice, no source). */
const DAYS_TYRE_LIES = 90;
const DAYS_PART_LIES = 60;
const DAYS_TO_SALE = 180;
const ID = 'would-be-read';

/**
 * What one would read on a unit built on the given day: one piece for each form the kind can take there, none when
 * nothing can be foreseen. It serves to weigh what is worth reading, never to judge a unit.
 */
export function typicalEvidence(kind: EvidenceKind, built: Day, owner: SerialOwner, shop: PreparedShop): Evidence[] {
  const { year } = civilDateOf(built);
  switch (kind) {
    case 'serial-scheme':
      return typicalSerials(built, owner, shop);
    case 'printed-date':
      return [{ id: ID, kind, date: formatDay(built).slice(0, 7) }];
    case 'standard-edition':
      return typicalEdition(built, shop);
    case 'engine-family':
      return [{ id: ID, kind, family: `${modelYearCharacter(year)}AAAS0000AAA`, engine: 'small-spark-ignition' }];
    case 'vin':
      return [{ id: ID, kind, vin: typicalVin(year), vehicle: 'other', checkDigit: 'required' }];
    case 'tyre-code':
      return [{ id: ID, kind, code: tyreCodeOf(built - DAYS_TYRE_LIES) }];
    case 'part-stamp':
      return [{ id: ID, kind, part: 'part', date: formatDay(built - DAYS_PART_LIES).slice(0, 7) }];
    case 'receipt':
      return [{ id: ID, kind, date: formatDay(built + DAYS_TO_SALE) }];
    case 'production-span':
    case 'first-seen':
      return [];
  }
}

function typicalSerials(built: Day, owner: SerialOwner, shop: PreparedShop): Evidence[] {
  return shop
    .schemes(owner.maker, owner.line)
    .filter(({ valid }) => valid.from <= built && built < valid.to)
    .map(({ scheme }) => ({ id: ID, kind: 'serial-scheme', ...owner, serial: writeSerial(scheme, built) }));
}

/** The newest edition a plate of that day can name. */
function typicalEdition(built: Day, shop: PreparedShop): Evidence[] {
  const newest = shop.editions.filter(({ floor }) => floor <= built).sort((a, b) => b.floor - a.floor)[0]?.edition;
  return newest ? [{ id: ID, kind: 'standard-edition', standard: newest.standard, edition: newest.edition }] : [];
}

function typicalVin(year: number): string {
  const tail = `${modelYearCharacter(Math.max(year, 1980))}A000001`;
  return `1AAAAAAA${vinCheckDigit(`1AAAAAAA0${tail}`)}${tail}`;
}
