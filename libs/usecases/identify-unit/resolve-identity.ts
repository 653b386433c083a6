import type { UnitIdentity } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { LineRow, Tables, UnitColumns } from '../ports/index';

/** A unit's identity as columns, with the line it belongs to. */
export interface ResolvedIdentity {
  readonly columns: UnitColumns;
  readonly line: LineRow | null;
}

/** Looks the line and model up; refuses those the catalogue does not know, and a serial that is there and absent. */
export async function resolveIdentity(tables: Tables, identity: UnitIdentity): Promise<Outcome<ResolvedIdentity>> {
  const { lineCode, modelNumber, options, plate } = identity;
  const serial = identity.serial === '' ? null : identity.serial;
  const serialAbsent = identity.serialAbsent === '' ? null : identity.serialAbsent;
  if (serial !== null && serialAbsent !== null) {
    return bad('serialAbsent', 'A serial number is given, and a reason why there is none; give one of the two.');
  }
  const line = lineCode === null ? null : await tables.catalogue.lineByCode(lineCode);
  if (lineCode !== null && !line) return bad('lineCode', `There is no product line '${lineCode}' in the catalogue.`);
  if (modelNumber !== null && !line) return bad('modelNumber', 'A model belongs to a product line; name the line too.');
  const model = line?.models.find(({ number }) => number === modelNumber) ?? null;
  if (modelNumber !== null && !model) return bad('modelNumber', `${line!.name} has no model '${modelNumber}'.`);
  const strange = Object.keys(options).find((code) => !line?.options.some((option) => option.code === code));
  if (strange !== undefined) return bad('options', `${line?.name ?? 'An unknown line'} has no option '${strange}'.`);
  const columns = { lineId: line?.id ?? null, modelId: model?.id ?? null, serial, serialAbsent, options, plate };
  return done({ columns, line });
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
