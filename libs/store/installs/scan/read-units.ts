import type { PoolClient } from 'pg';
import type { ScannedUnit } from '../../../usecases';
import { readDaySet } from '../../units/day-set-text';
import { copyRows } from './copy-rows';
import { RowCursor } from './row-cursor';

/** What is usual is not sent: no options, and build days that are one span, which their envelope tells. */
const FACTS = `u.id, u.built_from, u.built_to, m.number, u.serial_scheme, u.serial_key, NULLIF(u.options, '{}'),
  CASE WHEN u.built <> int4multirange(int4range(u.built_from, u.built_to)) THEN u.built END`;

type Options = ScannedUnit['options'];

/** Facts of the units that the condition on `u` chooses, by id. */
export async function readUnits(client: PoolClient, where: string): Promise<ReadonlyMap<number, ScannedUnit>> {
  const units = new Map<number, ScannedUnit>();
  const optionsOf = new Map<string | null, Options>([[null, {}]]);
  const row = new RowCursor();
  const query = `SELECT ${FACTS} FROM unit u LEFT JOIN model m ON m.id = u.model_id WHERE ${where}`;
  await copyRows(client, query, (bytes, begin, end) => {
    row.begin(bytes, begin, end);
    const [id, from, to, model] = [row.number(), row.number(), row.number(), row.text()];
    const [scheme, key, optionText, built] = [row.text(), row.text(), row.text(), row.text()];
    const serial = scheme === null ? null : { scheme, key };
    let options = optionsOf.get(optionText);
    if (!options) optionsOf.set(optionText, (options = JSON.parse(optionText!) as Options));
    const days = built !== null ? readDaySet(built) : from < to ? [{ from, to }] : [];
    units.set(id, { id, model, options, serial, built: days });
  });
  return units;
}
