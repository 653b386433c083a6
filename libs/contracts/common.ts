import { z } from 'zod';
import { parseDay } from '../day';

/** A civil day on the wire: `YYYY-MM-DD`, a day that exists. */
export const dayText = z
  .string()
  .refine((text) => parseDay(text) !== null, { error: 'expected a day that exists, written YYYY-MM-DD' })
  .meta({ format: 'date' });

/** An instant on the wire: ISO 8601 with its offset. */
export const instantText = z.iso.datetime({ offset: true });

/** Row id as the store gives it. */
export const rowId = z.int().positive().max(2_147_483_647);

/** What a change names in If-Match to say on which state it was made. */
export const version = z.int();

/** Free text of a person, trimmed; at most `max` characters. */
export const line = (max: number) => z.string().trim().max(max);

/** Free text that may not be empty, for reasons and complaints. */
export const reason = z.string().trim().min(3, { error: 'expected a reason of at least 3 characters' }).max(1_000);

/** Money in minor units of the shop's one currency. */
export const minorUnits = z.int().min(0).max(100_000_000);

export const VERDICTS = ['right', 'allowed', 'outdated', 'wrong', 'undecided', 'disputed'] as const;
export const verdict = z.enum(VERDICTS);
export type VerdictWord = z.infer<typeof verdict>;

export const STAGE_NAMES = ['intake', 'inspection', 'parts-selection', 'repair', 'handover'] as const;
export const stage = z.enum(STAGE_NAMES);
export type StageName = z.infer<typeof stage>;

export const ROLES = ['technician', 'counter', 'manager', 'administrator'] as const;
export const role = z.enum(ROLES);
export type Role = z.infer<typeof role>;

/** Closed-open span of days on the wire; null is an open side. */
export const daySpanText = z.object({ from: dayText.nullable(), to: dayText.nullable() });

/** Person named beside an act. */
export const personRef = z.object({ id: rowId, name: z.string() });

/**
 * What every refused request answers (RFC 9457 problem details): `type` is a stable code, `detail` one sentence
 * for a person, `field` the offending field where there is one, `current` the present state after a conflict,
 * `requestId` where the log tells more (5xx).
 */
export const problem = z.object({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string(),
  field: z.string().optional(),
  missing: z.array(z.string()).optional(),
  current: z.unknown().optional(),
  requestId: z.string().optional(),
});
export type Problem = z.infer<typeof problem>;
