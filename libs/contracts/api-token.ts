import { z } from 'zod';
import { instantText, rowId, type Role } from './common';
import { may, type Permission } from './policy';

/**
 * What a token may be made for: sets of the policy's permissions by name. What a person must answer for stands in none of
 * them: safety points, authorisation, exceptions, decisions about flags, publishing, people, settings, erasing. A set's
 * name is for programs; a person reads what it is `called` and what it `says`.
 */
export const TOKEN_SCOPES = {
  'look-up': {
    called: 'Look up parts',
    says: 'which part fits, as the catalogue and papers say',
    may: ['see-catalogue', 'look-up', 'see-shop-data', 'see-bulletins'],
  },
  'read-tickets': {
    called: 'Read tickets',
    says: 'tickets, flags and rechecks, with owners',
    may: ['see-tickets', 'see-flags', 'see-rechecks', 'see-owners'],
  },
  'write-tickets': {
    called: 'Write tickets',
    says: 'open tickets and bring them forward',
    may: [
      ...(['see-tickets', 'see-owners', 'open-ticket', 'change-tag', 'plan-benches', 'identify-unit'] as const),
      ...(['add-evidence', 'record-places', 'pick-parts', 'set-labour', 'write-estimates', 'take-photos'] as const),
      ...(['move-ticket', 'hold-ticket'] as const),
    ],
  },
  'read-callbacks': { called: 'Read callbacks', says: 'callbacks, with owners', may: ['see-callbacks', 'see-owners'] },
  'write-callbacks': {
    called: 'Work callbacks',
    says: 'write down calls, and close callbacks',
    may: ['see-callbacks', 'see-owners', 'work-callbacks', 'settle-callbacks'],
  },
  shelf: {
    called: 'Keep the shelf',
    says: 'the shelf: receive, count, order',
    may: ['see-shelf', 'move-stock', 'order-stock'],
  },
  bulletins: {
    called: 'Write bulletins',
    says: 'bulletins as drafts; a person publishes them',
    may: ['see-bulletins', 'see-catalogue', 'edit-bulletins'],
  },
  'bring-in': { called: 'Bring in', says: 'spreadsheets and the rulebook file in', may: ['bring-in'] },
  'take-out': {
    called: 'Take out',
    says: 'everything out, as spreadsheets and files',
    may: ['take-out', 'export-bookkeeping'],
  },
  figures: { called: 'Read figures', says: 'how benches, parts and callbacks did', may: ['see-figures'] },
  trail: { called: 'Read the trail', says: 'everything that was done about a unit', may: ['see-trail'] },
  monitoring: { called: 'Watch the queue', says: 'how the queue of rechecks stands', may: ['see-metrics'] },
  description: { called: 'Read how the API is asked', says: 'the description of the API', may: ['see-api'] },
} as const satisfies Record<
  string,
  { readonly called: string; readonly says: string; readonly may: readonly Permission[] }
>;

export type TokenScope = keyof typeof TOKEN_SCOPES;
export const TOKEN_SCOPE_NAMES = Object.keys(TOKEN_SCOPES) as TokenScope[];

/** The scopes that let a program do what a route asks; none where only a person may. */
export function scopesFor(permission: Permission): readonly TokenScope[] {
  return TOKEN_SCOPE_NAMES.filter((scope) => (TOKEN_SCOPES[scope].may as readonly Permission[]).includes(permission));
}

/** True when a token of these scopes may do it: one of them names it, and so may the role of the person who made it. */
export function tokenMay(scopes: readonly string[], role: Role, permission: Permission): boolean {
  return may(role, permission) && scopesFor(permission).some((scope) => scopes.includes(scope));
}

/** The scopes of which the role may do at least something; no other can be given to a token. */
export function scopesOf(role: Role): readonly TokenScope[] {
  return TOKEN_SCOPE_NAMES.filter((scope) => TOKEN_SCOPES[scope].may.some((permission) => may(role, permission)));
}

/** Longest life of a token, in days: a year, and a day to put the next one in place. */
export const LONGEST_TOKEN_DAYS = 366;
const DAYS = { error: `expected 1 to ${LONGEST_TOKEN_DAYS} days` };

/** A token as it is listed: never the token itself, which is shown once. */
export const apiTokenView = z.object({
  id: rowId,
  name: z.string(),
  /** its first characters, to tell which one it is */
  prefix: z.string(),
  scopes: z.array(z.enum(TOKEN_SCOPE_NAMES)),
  /** whose role and location limit it */
  madeBy: z.object({ id: rowId, name: z.string() }),
  createdAt: instantText,
  expiresAt: instantText,
  /** to the minute; null when it was never used */
  lastUsedAt: instantText.nullable(),
  /** `idle` while the person who made it does not work here */
  state: z.enum(['good', 'expired', 'revoked', 'idle']),
});
export type ApiTokenView = z.infer<typeof apiTokenView>;

/** GET /api/tokens: a manager's own, an administrator's all; newest first. `scopes` are those the asker may give. */
export const apiTokenList = z.object({ tokens: z.array(apiTokenView), scopes: z.array(z.enum(TOKEN_SCOPE_NAMES)) });
export type ApiTokenList = z.infer<typeof apiTokenList>;

/** POST /api/tokens */
export const newApiToken = z.object({
  name: z.string().trim().min(1, { error: 'expected a name that tells which program has it' }).max(60),
  scopes: z
    .array(z.enum(TOKEN_SCOPE_NAMES, { error: `expected scopes of ${TOKEN_SCOPE_NAMES.join(', ')}` }))
    .min(1, { error: 'expected at least one scope' })
    .transform((scopes) => [...new Set(scopes)]),
  /** how many days it lasts */
  days: z.int(DAYS).min(1, DAYS).max(LONGEST_TOKEN_DAYS, DAYS),
});
export type NewApiToken = z.infer<typeof newApiToken>;

/** What making one answers: the token is shown this once and kept nowhere. */
export const apiTokenMade = z.object({ made: apiTokenView, token: z.string() });
export type ApiTokenMade = z.infer<typeof apiTokenMade>;
