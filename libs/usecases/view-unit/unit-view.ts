import { readSerial } from '../../build-date';
import type { UnitView, WarrantyView } from '../../contracts';
import { day, formatDay, type Day } from '../../day';
import { runsOn, sayWarranty, warrantyUntil } from '../../ticket';
import { buildDatesView } from '../build-days/index';
import type { UnitRow } from '../ports/index';
import type { WholeUnit } from './load-unit';

/** A unit for the page: what it is, when it can have been built, and what would settle that. */
export function unitView(whole: WholeUnit): UnitView {
  const { unit, shop, today } = whole;
  const owner = unit.maker && unit.line ? { maker: unit.maker.code, line: unit.line.code } : null;
  return {
    lineCode: unit.line?.code ?? null,
    modelNumber: unit.model?.number ?? null,
    serial: unit.serial,
    serialAbsent: unit.serialAbsent,
    options: { ...unit.options },
    plate: unit.plate,
    id: unit.id,
    lineName: unit.line?.name ?? null,
    makerName: unit.maker?.name ?? null,
    modelName: unit.model?.name ?? null,
    version: unit.version,
    owner: unit.owner,
    buildDates: buildDatesView({
      answer: whole.inferred.answer,
      evidence: whole.evidence,
      rows: whole.evidenceRows,
      rulings: whole.rulings,
      maker: owner?.maker ?? null,
      line: owner?.line ?? null,
      serialAbsent: unit.serialAbsent !== null,
      shop,
      today,
    }),
    warranty: warrantyView(unit, today),
    serialReading: owner && unit.serial !== null ? readSerial(unit.serial, owner, shop, today).sentence : null,
  };
}

function warrantyView({ warranty }: UnitRow, today: Day): WarrantyView | null {
  if (!warranty) return null;
  const term = { boughtOn: day(warranty.boughtOn), months: warranty.months };
  return {
    ...warranty,
    lastDay: formatDay(warrantyUntil(term) - 1),
    runs: runsOn(term, today),
    sentence: sayWarranty(term, today),
  };
}
