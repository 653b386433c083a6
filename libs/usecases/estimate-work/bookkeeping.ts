import type { BookkeepingQuery } from '../../contracts';
import { decimal } from '../../ticket';
import { sightOf, type Actor } from '../actor';
import type { BookedEstimate } from '../ports/index';
import type { Ports } from '../run';

/** The columns of the table for the shop's books; amounts have two places and a point. */
export const BOOKKEEPING_COLUMNS = [
  'handed over',
  'location',
  'ticket',
  'owner',
  'revision',
  'line',
  'kind',
  'part',
  'what',
  'quantity',
  'minutes',
  'amount',
  'currency',
  'tax',
  'tax percent',
  'tax included',
  'ticket net',
  'ticket tax',
  'ticket total',
  'authorised',
] as const;

/**
 * One row for each line of the last estimate of every ticket handed over in the span, oldest first; its sums stand on
 * its first row only, so that adding a column up counts each ticket once. No invoice, and no accounts.
 */
export async function bookkeepingRows(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { from, to }: BookkeepingQuery,
): Promise<readonly (readonly string[])[]> {
  const booked = await store.estimates.handedOver(from, to, sightOf(actor));
  return [BOOKKEEPING_COLUMNS, ...booked.flatMap(rowsOf)];
}

function rowsOf(one: BookedEstimate): string[][] {
  const { tax, authorisedMinor } = one;
  const sums = [one.netMinor, one.taxMinor, one.totalMinor].map(decimal);
  return one.lines.map((line, index) => [
    one.handedOverOn,
    one.location,
    one.ticket,
    one.owner,
    String(one.revision),
    String(index + 1),
    line.kind,
    line.part ?? '',
    line.what,
    String(line.quantity),
    String(line.minutes),
    decimal(line.amountMinor),
    one.currency,
    tax.name,
    decimal(tax.basisPoints),
    tax.included ? 'yes' : 'no',
    ...(index === 0 ? [...sums, authorisedMinor === null ? '' : decimal(authorisedMinor)] : ['', '', '', '']),
  ]);
}
