import { partKeyOf, readPartNumber, type PartKey } from '../../part-number';
import { makers } from '../makers/makers';

/** The key of a number as the maker prints it; throws for a number that the maker would not print. */
export function keyOfPart(makerCode: string, number: string): PartKey {
  const maker = makers.find(({ code }) => code === makerCode);
  if (!maker) throw new RangeError(`the demo has no maker ${makerCode}`);
  const reading = readPartNumber(number, maker.numberRules);
  if (!reading.ok) throw new RangeError(`${makerCode} would not print ${number}: ${reading.problem.code}`);
  return partKeyOf(makerCode, reading.number.canonical);
}

/** The number as it stands on a bag of several, in the maker's way of writing. */
export function packOf(makerCode: string, number: string, count: number): string {
  const mark = makers.find(({ code }) => code === makerCode)?.numberRules.packMarks[0];
  return mark ? `${number}${mark.before}${count}${mark.after}` : number;
}
