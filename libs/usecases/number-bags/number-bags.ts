import type { AddTradeNumber, Part } from '../../contracts';
import { readTradeNumber, writeTradeNumber } from '../../part-number';
import { toPart } from '../browse-catalogue/to-contract';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';

/** Writes down the number in the bar code of a part's bag, and how many are in that bag; it can be of one part only. */
export function addTradeNumber(
  { store }: Pick<Ports, 'store'>,
  { partId, number, pack }: AddTradeNumber & { readonly partId: number },
): Promise<Outcome<Part>> {
  return store.transaction(async (tx) => {
    const read = readTradeNumber(number);
    if (!read.ok) return refused('bad-input', `“${number}” cannot be kept: ${read.problem}.`, { field: 'number' });
    const { gtin } = read;
    const part = await partView(tx, partId);
    if (!part.ok) return part;
    if (!(await tx.catalogue.addTradeNumber({ partId, gtin, pack }))) {
      const [holder] = await tx.catalogue.partsByTradeNumbers([gtin]);
      const whose = holder ? ` ${holder.part.number} of ${holder.part.maker}` : ' another part';
      return refused('conflict', `${writeTradeNumber(gtin)} is the number of${whose} already.`, { field: 'number' });
    }
    return partView(tx, partId);
  });
}

/** Takes a trade number away from its part. */
export function removeTradeNumber(
  { store }: Pick<Ports, 'store'>,
  { partId, number }: { readonly partId: number; readonly number: string },
): Promise<Outcome<Part>> {
  return store.transaction(async (tx) => {
    const read = readTradeNumber(number);
    if (!read.ok || !(await tx.catalogue.removeTradeNumber(partId, read.gtin))) {
      return refused('not-found', `The part has no trade number ${number.slice(0, 40)}.`);
    }
    return partView(tx, partId);
  });
}

async function partView({ catalogue }: Tables, partId: number): Promise<Outcome<Part>> {
  const [part] = await catalogue.partsByIds([partId]);
  if (!part?.listed) return refused('not-found', `There is no part ${partId} in the catalogue.`);
  return done(toPart(part, await catalogue.tradeNumbersOf([partId])));
}
