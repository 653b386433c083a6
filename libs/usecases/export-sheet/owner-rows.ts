import { cellsOfEvidence } from '../../sheets';
import type { OwnerWithUnit, Tables } from '../ports/index';
import type { Values } from './catalogue-rows';

const AT_ONCE = 1_000;

/** Owners of the location (null: of every one), each unit on a row. */
export async function* ownerRows({ bulk }: Tables, locationId: number | null): AsyncGenerator<readonly Values[]> {
  for (let after = { owner: 0, unit: 0 }; ;) {
    const page = await bulk.pageOfUnits(after, AT_ONCE, locationId);
    if (page.length === 0) return;
    yield page.map(rowOf);
    const { owner, unit } = page[page.length - 1]!;
    after = { owner: owner.id, unit: unit?.id ?? 0 };
  }
}

function rowOf({ owner, unit }: OwnerWithUnit): Values {
  const { id, name, phone, email, address, consent } = owner;
  const head = { ownerNumber: id, name, phone, email, address, consent };
  if (!unit) return head;
  const { line, model, serial, serialAbsent, options, plate, evidence } = unit;
  return {
    ...head,
    unitNumber: unit.id,
    line,
    model,
    serial,
    serialAbsent,
    options: Object.entries(options).map(([option, fitted]) => ({ option, fitted })),
    plate,
    ...cellsOfEvidence(evidence),
  };
}
