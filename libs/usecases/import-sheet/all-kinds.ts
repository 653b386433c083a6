import type { SheetKind } from '../../sheets';
import type { OpenKind } from './kind-work';
import { openLines } from './kinds/lines';
import { openMakers } from './kinds/makers';
import { openOwners } from './kinds/owners';
import { openParts } from './kinds/parts';
import { openPositions } from './kinds/positions';
import { openRules } from './kinds/rules';
import { openSchemes } from './kinds/schemes';
import { openSupersessions } from './kinds/supersessions';
import { openTickets } from './kinds/tickets';

/** How each kind is weighed and written. */
export const KIND_WORK: Readonly<Record<SheetKind, OpenKind>> = {
  makers: openMakers,
  lines: openLines,
  positions: openPositions,
  parts: openParts,
  supersessions: openSupersessions,
  schemes: openSchemes,
  rules: openRules,
  owners: openOwners,
  tickets: openTickets,
};
