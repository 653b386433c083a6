import type { Role } from './common';

const ALL: readonly Role[] = ['technician', 'counter', 'manager', 'administrator'];
const BENCH: readonly Role[] = ['technician', 'manager'];
const COUNTER: readonly Role[] = ['counter', 'manager'];
const DESK: readonly Role[] = ['technician', 'counter', 'manager'];
const MANAGER: readonly Role[] = ['manager'];

/**
 * Who may do what. The route names its permission, the guard reads this table, the page greys out by it, and the
 * tests walk through it: there is no other list of rights.
 */
export const POLICY = {
  'see-catalogue': ALL,
  'see-tickets': ALL,
  'look-up': ALL,
  'see-owners': DESK,
  /**
   * Owners, units, tickets and calls of all locations, where the others see those of their own: a bulletin knows no
   * location, and who answers for the shop answers for all of it. No route asks for it; what every route shows follows it.
   */
  'see-every-location': ['manager', 'administrator'],
  'open-ticket': DESK,
  'change-tag': DESK,
  /** Which ticket lies on which bench, and in which order. */
  'plan-benches': COUNTER,
  'change-benches': MANAGER,
  'choose-my-bench': DESK,
  'identify-unit': DESK,
  'add-evidence': DESK,
  'set-aside-evidence': BENCH,
  /** What was noted for the next visit is done, or is not to be done. */
  'settle-notes': DESK,
  /** The day of purchase and the term. */
  'set-warranty': DESK,
  'record-places': BENCH,
  'pick-parts': DESK,
  /** A part that is neither right nor allowed, fitted on a manager's word. */
  'except-part': MANAGER,
  /** Which trade numbers the bags of a part carry. */
  'number-bags': DESK,
  'see-shelf': ALL,
  /** Receive, count, and mark what a bulletin had pulled. */
  'move-stock': DESK,
  /** Bins, reorder points, and what is ordered. */
  'order-stock': COUNTER,
  'set-labour': DESK,
  'authorise-work': DESK,
  'write-estimates': DESK,
  /** What was earned on tickets handed over, as a table for the shop's books. */
  'export-bookkeeping': ['manager', 'administrator'],
  'take-photos': DESK,
  'tick-safety': BENCH,
  'move-ticket': DESK,
  'hold-ticket': DESK,
  'cancel-ticket': COUNTER,
  'see-flags': ALL,
  'decide-flags': MANAGER,
  'see-bulletins': ALL,
  'edit-bulletins': MANAGER,
  'publish-bulletins': MANAGER,
  'withdraw-bulletins': MANAGER,
  'see-rechecks': ALL,
  'order-recheck': MANAGER,
  /** Serial schemes and editions of standards: what build dates are read by. */
  'see-shop-data': ALL,
  'edit-shop-data': ['manager', 'administrator'],
  /** Spreadsheets and the rulebook file, in and out: what they hold goes past every other permission. */
  'bring-in': ['manager', 'administrator'],
  'take-out': ['manager', 'administrator'],
  'see-callbacks': DESK,
  'work-callbacks': COUNTER,
  'settle-callbacks': COUNTER,
  /** How benches, parts and callbacks did; the counter sees its own location. */
  'see-figures': ['counter', 'manager', 'administrator'],
  'change-settings': ['manager', 'administrator'],
  /** What is kept of a person: handed over on request, erased on request, and for how long it stays unasked. */
  'manage-personal-data': ['manager', 'administrator'],
  /** Everything that was ever done about a unit, and by whom. */
  'see-trail': ['manager', 'administrator'],
  'manage-people': ['administrator'],
  /** Tokens of other programs: one's own, */
  'manage-tokens': ['manager', 'administrator'],
  /** and those of all others. No route asks for it; what the routes of tokens show follows it. */
  'manage-all-tokens': ['administrator'],
  /** Addresses of other programs that are told of flags, callbacks and rechecks. */
  'manage-webhooks': ['administrator'],
  /** Through which server, under which name, the shop's e-mails go. */
  'change-mail-server': ['administrator'],
  /** How the queue of rechecks stands, for monitoring programs. */
  'see-metrics': ['administrator'],
  /** The description of the API, and the page to read it. */
  'see-api': ['administrator'],
} as const satisfies Record<string, readonly Role[]>;

export type Permission = keyof typeof POLICY;

/** True when the role has the permission. */
export function may(role: Role, permission: Permission): boolean {
  return (POLICY[permission] as readonly Role[]).includes(role);
}

/** Everything the role may do, in the order of the table. */
export function permissionsOf(role: Role): readonly Permission[] {
  return (Object.keys(POLICY) as Permission[]).filter((permission) => may(role, permission));
}
