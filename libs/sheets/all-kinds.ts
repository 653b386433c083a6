import type { Kind } from './column';
import { lines, positions } from './kinds/lines';
import { makers } from './kinds/makers';
import { owners } from './kinds/owners';
import { parts, supersessions } from './kinds/parts';
import { rules } from './kinds/rules';
import { schemes } from './kinds/schemes';
import { tickets } from './kinds/tickets';

/** Every kind of spreadsheet, in the order an empty shop needs them. */
export const KINDS = { makers, lines, positions, parts, supersessions, schemes, rules, owners, tickets } as const;

export const SHEET_KINDS = [
  'makers',
  'lines',
  'positions',
  'parts',
  'supersessions',
  'schemes',
  'rules',
  'owners',
  'tickets',
] as const;
export type SheetKind = (typeof SHEET_KINDS)[number];

/** A kind without its own types, for what treats all alike. */
export function kindOf(id: SheetKind): Kind {
  return KINDS[id] as unknown as Kind;
}
