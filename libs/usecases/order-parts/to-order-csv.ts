import type { OrderList } from '../../contracts';
import { csvTable } from '../../sheets';

const HEAD = ['supplier', 'part_number', 'name', 'order', 'pack_size', 'packs', 'free', 'coming', 'waited_for'];

/** The list of what to order as CSV, by supplier, one line for each part. */
export function toOrderCsv({ lines }: OrderList): string {
  const rows = lines.map(({ supplier, part, order, packSize, free, coming, waited }) => [
    supplier,
    part.number,
    part.name,
    order,
    packSize,
    order / packSize,
    free,
    coming,
    waited,
  ]);
  return csvTable([HEAD, ...rows]);
}
