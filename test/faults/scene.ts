import { day, formatDay } from '../../libs/day';
import { publishBulletin, saveBulletin, type RecheckRow } from '../../libs/usecases';
import { bulletin, manager, rule, TODAY } from '../recheck/small-shop';
import { value } from '../recheck/wait';
import { Draw } from './draw';
import type { House } from './house';

const RECENT = formatDay(TODAY - 100);
const FIRST_BUILT = day('1980-01-01');
const PLACES = 2;
let scenes = 0;

/** Units with a build day of their own, and a bulletin that asks for HOLM/B on every one of them. */
export interface Scene {
  readonly seed: number;
  readonly units: readonly number[];
  readonly bulletinId: number;
  readonly number: string;
}

/** Part 1, 2 or 3 (HOLM/A, HOLM/B, HOLM/C) for each place of each unit, in order; the same for the same seed. */
export function partsOf(seed: number, count: number): readonly number[] {
  const draw = new Draw(seed);
  return Array.from({ length: count * PLACES }, () => 1 + draw.below(3));
}

/** Sets a scene up; the bulletin is saved and not yet published. */
export async function setScene(house: House, count: number, seed: number): Promise<Scene> {
  const built = FIRST_BUILT + 2 * ++scenes;
  const [from, to] = [formatDay(built), formatDay(built + 1)];
  const units = await house.shop.many(count, RECENT, [from, to]);
  await house.pool.query(
    `UPDATE install i SET part_id = p.part
     FROM unnest($1::int[], $2::int[], $3::int[]) AS p(unit, place, part)
     WHERE i.unit_id = p.unit AND i.place = p.place`,
    [units.flatMap((unit) => [unit, unit]), units.flatMap(() => [1, 2]), partsOf(seed, count)],
  );
  const number = `SB-${scenes}`;
  const one = rule(`FR-${scenes}`, { built: { from, to }, required: 'HOLM/B', action: 'call-back' });
  const { id } = await value(saveBulletin(house.shop.ports, manager, bulletin(number, [one])));
  return { seed, units, bulletinId: id, number };
}

export async function publish(house: House, { bulletinId }: Scene): Promise<number> {
  return (await value(publishBulletin(house.shop.ports, manager, { id: bulletinId, version: 1 }))).recheckId;
}

/**
 * What must come of a scene, worked out without any of the code under test: what was right until today is outdated, what
 * never was is wrong, and a unit with either is called once with one reason for each such place.
 */
export function expectedPicture(seed: number, count: number): readonly string[] {
  const parts = partsOf(seed, count);
  return Array.from({ length: count }, (_, unit) => {
    const words = [0, 1].map((place) => ['outdated', 'right', 'wrong'][parts[unit * PLACES + place]! - 1]!);
    const late = words.flatMap((word, place) => (word === 'right' ? [] : [`${place + 1} ${word} x1`]));
    const changes = words.map((word, place) => `${place + 1} none>${word} x1`).join(', ');
    return `${unit}: ${words.join(', ')} | ${changes} | calls ${late.length > 0 ? 1 : 0}: ${late.join(', ')}`;
  });
}

/** The same as the database has it: verdicts, the rows of their history, calls and reasons, each with its count. */
export async function pictureOf(house: Pick<House, 'pool'>, { units }: Scene): Promise<readonly string[]> {
  const { rows } = await house.pool.query<{ text: string }>(
    `SELECT (u.n - 1) || ': ' ||
       (SELECT string_agg(COALESCE(i.verdict, 'none'), ', ' ORDER BY i.place) FROM install i WHERE i.unit_id = u.id)
       || ' | ' || COALESCE((SELECT string_agg(v.text, ', ' ORDER BY v.text) FROM (
          SELECT place || ' ' || COALESCE(from_verdict, 'none') || '>' || to_verdict || ' x' || count(*) AS text
          FROM verdict_change WHERE unit_id = u.id GROUP BY place, from_verdict, to_verdict) v), '')
       || ' | calls ' || (SELECT count(*) FROM callback WHERE unit_id = u.id) || ': '
       || COALESCE((SELECT string_agg(r.text, ', ' ORDER BY r.text) FROM (
          SELECT r.place || ' ' || r.verdict || ' x' || count(*) AS text
          FROM callback c JOIN callback_reason r ON r.callback_id = c.id
          WHERE c.unit_id = u.id GROUP BY r.source_id, r.place, r.verdict) r), '') AS text
     FROM unnest($1::int[]) WITH ORDINALITY AS u(id, n) ORDER BY u.n`,
    [units],
  );
  return rows.map(({ text }) => text);
}

/** The recheck as it stands; null while nobody can say. */
export async function look(house: House, recheckId: number): Promise<RecheckRow | null> {
  return house.shop.store.rechecks.find(recheckId).catch(() => null);
}
