import { prepareShop, type PreparedShop } from '../../build-date';
import { formatDay } from '../../day';
import type { DemoShop } from '../../demo';
import { evidenceOf, inferUnit } from '../../usecases';
import type { Db } from '../db';
import { envelopeColumns, writeDaySet } from '../units/day-set-text';
import { squeeze } from '../units/unit-store';
import { takeIds } from '../take-ids';
import { insertRows, type IdsByKey } from './insert-rows';
import type { CatalogueIds } from './seed-catalogue';

type DemoUnit = DemoShop['units'][number];

/** Owners and units with their evidence; ids in the order of the shop's lists. */
export interface UnitIds {
  readonly owner: readonly number[];
  readonly unit: readonly number[];
}

export async function seedUnits(db: Db, shop: DemoShop, catalogue: CatalogueIds, location: IdsByKey): Promise<UnitIds> {
  const owner = await takeIds(db, 'owner', shop.owners.length);
  const unit = await takeIds(db, 'unit', shop.units.length);
  await seedOwners(db, shop, owner, location);
  const prepared = prepareShop({ serialSchemes: [...shop.schemes], standardEditions: [...shop.editions] });
  const rows = shop.units.map((one) => ({
    id: unit[one.index],
    owner_id: owner[one.owner],
    ...identityColumns(one, catalogue),
    ...builtColumns(one, shop, prepared),
  }));
  await insertRows(db, 'unit', UNIT_COLUMNS, rows);
  await seedEvidence(db, shop, unit);
  return { owner, unit };
}

const UNIT_COLUMNS = {
  id: 'int',
  owner_id: 'int',
  line_id: 'int',
  model_id: 'int',
  serial: 'text',
  serial_absent: 'text',
  serial_search: 'text',
  serial_scheme: 'text',
  serial_key: 'text',
  options: 'jsonb',
  plate: 'text',
  built: 'int4multirange',
  built_from: 'int',
  built_to: 'int',
};

async function seedOwners(db: Db, shop: DemoShop, ids: readonly number[], location: IdsByKey): Promise<void> {
  const rows = shop.owners.map((one) => ({ ...one, id: ids[one.index], location_id: location.of(one.location) }));
  const columns = { id: 'int', location_id: 'int', name: 'text', phone: 'text', email: 'text', address: 'text' };
  await insertRows(db, 'owner', { ...columns, consent: 'boolean' }, rows);
}

function identityColumns({ line, model, serial, serialAbsent, options, plate }: DemoUnit, catalogue: CatalogueIds) {
  return {
    line_id: catalogue.line.of(line),
    model_id: catalogue.model.of(`${line} ${model}`),
    serial,
    serial_absent: serialAbsent,
    serial_search: serial === null ? null : squeeze(serial),
    options,
    plate,
  };
}

/** The same reckoning as when a person changes a unit. */
function builtColumns(one: DemoUnit, shop: DemoShop, prepared: PreparedShop) {
  const line = shop.lines.find(({ code }) => code === one.line)!;
  const maker = shop.makers.find(({ code }) => code === line.maker)!;
  const evidenced = {
    serial: one.serial,
    maker: { id: 0, code: maker.code, name: maker.name },
    line: {
      id: 0,
      code: line.code,
      name: line.name,
      sketch: line.sketch,
      producedFrom: formatDay(line.producedFrom),
      producedUntil: line.producedUntil === null ? null : formatDay(line.producedUntil),
    },
  };
  const rows = recordedEvidence(one).map(({ kind, data }, id) => ({ id, kind, data, setAside: null }));
  const { columns } = inferUnit(evidenced, evidenceOf(evidenced, rows), prepared, shop.today);
  const { from, to } = envelopeColumns(columns.built);
  return {
    serial_scheme: columns.serialScheme,
    serial_key: columns.serialKey,
    built: writeDaySet(columns.built),
    built_from: from,
    built_to: to,
  };
}

/** Pieces with a row of their own; the serial and the time the line was made follow from the unit's identity. */
function recordedEvidence({ evidence }: DemoUnit) {
  return evidence
    .filter(({ kind }) => kind !== 'serial-scheme' && kind !== 'production-span')
    .map(({ id: _id, kind, ...data }) => ({ kind, data }));
}

async function seedEvidence(db: Db, shop: DemoShop, ids: readonly number[]): Promise<void> {
  const rows = shop.units.flatMap((one) =>
    recordedEvidence(one).map(({ kind, data }) => ({
      unit_id: ids[one.index],
      kind,
      data,
      recorded_at: `${formatDay(one.firstSeen)}T08:00:00Z`,
    })),
  );
  await insertRows(db, 'evidence', { unit_id: 'int', kind: 'text', data: 'jsonb', recorded_at: 'timestamptz' }, rows);
}
