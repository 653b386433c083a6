import type { DemoShop } from '../../demo';
import { CURRENCY, IN_FORCE_DAY, KEEP_SHELF, LOOK_BACK_MONTHS, MONEY, PRINTS, STANDING } from '../../usecases';
import { formatDay } from '../../day';
import type { Db } from '../db';
import { hashPassword } from '../people/passwords';
import { idsFor, insertRows, type IdsByKey } from './insert-rows';

export interface HouseIds {
  readonly location: IdsByKey;
  readonly bench: IdsByKey;
  readonly person: IdsByKey;
}

/** Locations, benches, people and settings. */
export async function seedHouse(db: Db, shop: DemoShop): Promise<HouseIds> {
  const location = await idsFor(
    db,
    'location',
    shop.locations.map(({ code }) => code),
  );
  const bench = await idsFor(
    db,
    'bench',
    shop.benches.map(({ code }) => code),
  );
  const person = await idsFor(
    db,
    'person',
    shop.people.map(({ login }) => login),
  );
  const named = { id: 'int', code: 'text', name: 'text' };
  await insertRows(
    db,
    'location',
    named,
    shop.locations.map((one) => ({ ...one, id: location.of(one.code) })),
  );
  const benches = shop.benches.map((one) => ({
    ...one,
    id: bench.of(one.code),
    location_id: location.of(one.location),
    day_minutes: one.dayMinutes,
  }));
  await insertRows(db, 'bench', { ...named, location_id: 'int', day_minutes: 'int' }, benches);
  await seedPeople(db, shop, { location, bench, person });
  await seedSettings(db, shop);
  return { location, bench, person };
}

async function seedPeople(db: Db, shop: DemoShop, { location, bench, person }: HouseIds): Promise<void> {
  const hashes = await Promise.all(shop.people.map(({ password }) => hashPassword(password)));
  const rows = shop.people.map(({ login, name, role, location: at, bench: worksAt }, index) => ({
    id: person.of(login),
    login,
    name,
    role,
    location_id: location.of(at),
    bench_id: worksAt === null ? null : bench.of(worksAt),
    password_hash: hashes[index],
  }));
  const columns = { id: 'int', login: 'text', name: 'text', role: 'text', location_id: 'int', password_hash: 'text' };
  await insertRows(db, 'person', { ...columns, bench_id: 'int' }, rows);
}

async function seedSettings(db: Db, { settings, today }: DemoShop): Promise<void> {
  const rows = [
    { key: LOOK_BACK_MONTHS, value: settings.lookBackMonths },
    { key: STANDING, value: settings.standing },
    { key: KEEP_SHELF, value: true },
    { key: IN_FORCE_DAY, value: formatDay(today) },
    { key: PRINTS, value: settings.prints },
    { key: CURRENCY, value: settings.currency },
    { key: MONEY, value: settings.money },
    { key: DEMO_SHOP, value: true },
  ];
  await insertRows(db, 'setting', { key: 'text', value: 'jsonb' }, rows);
}

/** The setting that says that the shop is the demo, so that the sign-in page may name its people. */
export const DEMO_SHOP = 'demo-shop';
