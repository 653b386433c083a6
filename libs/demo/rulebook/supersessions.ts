import type { SupersessionFile } from '../../fit-rules';
import { instantAt, writeInstant, type Calendar } from '../calendar';
import { keyOfPart } from './part-keys';

type Row = readonly [
  maker: string,
  from: string,
  to: string | null,
  direction: SupersessionFile['direction'],
  yearsAgo: number,
];

/** What gives way to what, as the makers' price lists said, and how many years ago the shop read it. */
const ROWS: readonly Row[] = [
  ['BRAKEN', '30-1204', '30-1204A', 'one-way', 9],
  ['BRAKEN', '33-0901', '33-0901A', 'one-way', 7],
  ['BRAKEN', '32-4410', '32-4410A', 'one-way', 8],
  ['BRAKEN', '20-5120', '20-5120A', 'both-ways', 6],
  ['BRAKEN', '21-0330', '21-0330B', 'one-way', 7],
  ['BRAKEN', '21-0510', '21-0511', 'both-ways', 9],
  ['BRAKEN', '50-5020', '50-5021', 'one-way', 5],
  ['BRAKEN', '51-1210', '51-1210A', 'both-ways', 5],
  ['BRAKEN', '32-2219', null, 'dead', 10],
  ['BRAKEN', '29-7010', '39-7010', 'both-ways', 8],
  ['QUILMO', 'G310-040', 'G310-040A', 'one-way', 6],
  ['QUILMO', 'G321-001', 'G321-001A', 'one-way', 8],
  ['QUILMO', 'G331-030', 'G331-034', 'one-way', 7],
  ['QUILMO', 'G411-020', 'G411-020A', 'both-ways', 6],
  ['QUILMO', 'G422-011', 'G422-011B', 'one-way', 5],
  ['QUILMO', 'G512-030', 'G512-032', 'one-way', 4],
  ['QUILMO', 'G310-099', null, 'dead', 9],
  ['QUILMO', 'G390-010', 'G490-010', 'both-ways', 7],
  ['TARNVE', '621.005.11', '621.005.14', 'one-way', 7],
  ['TARNVE', '630.120.01', '630.120.02', 'both-ways', 6],
  ['TARNVE', '730.200.05', '730.200.06', 'one-way', 4],
  ['TARNVE', '721.005.40', '721.005.44', 'one-way', 4],
  ['TARNVE', '690.100.10', '790.100.10', 'both-ways', 8],
];

/** The supersessions of all three makers. */
export function supersessions(calendar: Calendar): SupersessionFile[] {
  return ROWS.map(([maker, from, to, direction, yearsAgo]) => ({
    from: keyOfPart(maker, from),
    to: to === null ? null : keyOfPart(maker, to),
    direction,
    known: { from: writeInstant(instantAt(calendar.ago(yearsAgo, 2, 1), 9)), to: null },
  }));
}
