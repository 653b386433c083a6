/**
 * When was this unit built? Every piece of evidence is a set of possible days; the answer is what all of them allow.
 *
 *   prepareShop(shopData: ShopData): PreparedShop                    once per change of the shop's data
 *   readSerial(serial, { maker, line? }, shop, today): SerialReport  which characters were read as what
 *   possibleKeys(report, days): PossibleKey[]                        the serial's place for serial spans of fit rules
 *   readEvidence(evidence, shop, today): ReadPiece                   one piece: days, sentence, problem
 *   inferBuildDays(evidence, shop, today): DaySet                    fast: the possible days alone
 *   inferBuildDates(evidence, shop, today): BuildDateAnswer          with reasons, conflicts, misreadings, splits
 *   cutAt(days, boundaries): OutcomeCut[]                            when outcomes are known only by their boundaries
 *   whatWouldSettle({ cuts, missing, maker, line?, shop, today }): Settling
 */
export * from './written-days';
export * from './serial-field';
export * from './serial-scheme';
export * from './standard-edition';
export * from './evidence';
export * from './shop-data';
export * from './serial-reading';
export * from './answer';
export * from './settle';
export { EARLIEST_BUILD_DAY, boundsOf } from './bounds';
export { prepareShop, type PreparedShop } from './prepare-shop';
export { readSerial, possibleKeys, type SerialOwner } from './read-serial';
export {
  evidenceOfUnit,
  impliedEvidence,
  serialOfUnit,
  PRODUCTION_ID,
  SERIAL_ID,
  type DatedUnit,
} from './evidence-of-unit';
export { writeSerial, type SerialRest } from './write-serial';
export { readEvidence } from './read-evidence';
export { inferBuildDays } from './infer-build-days';
export { inferBuildDates } from './infer-build-dates';
export { cutAt, whatWouldSettle, type SettlingQuestion } from './what-would-settle';
export { READING_EFFORT, WHERE_TO_LOOK } from './reading-effort';
export { PUBLISHED_STANDARD_EDITIONS } from './published-standard-editions';
export { modelYearCharacter, modelYearWindow } from './model-year';
export { vinCheckDigit } from './vin-rules';
