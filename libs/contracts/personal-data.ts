import { z } from 'zod';
import { instantText, rowId } from './common';

const dayText = z.string().nullable();

/** GET /api/owners/:id/personal-data: everything that is kept of one person, as the person may ask for it. */
export const personalData = z.object({
  owner: z.object({
    id: rowId,
    name: z.string(),
    phone: z.string(),
    email: z.string(),
    address: z.string(),
    /** agreed to be called when an answer changes */
    consent: z.boolean(),
    location: z.string(),
    /** null while nothing was erased */
    erasedAt: instantText.nullable(),
    version: z.int(),
  }),
  units: z.array(z.object({ id: rowId, name: z.string(), serial: z.string().nullable() })),
  tickets: z.array(
    z.object({
      id: rowId,
      number: z.string(),
      unit: z.string(),
      openedOn: z.string(),
      closedOn: dayText,
      complaint: z.string(),
      /** who said yes to the work, and how */
      authorisation: z.object({ by: z.string(), how: z.string() }).nullable(),
      /** what stands under its photos; the pictures are under /api/photos/:name */
      photos: z.array(z.object({ name: z.string(), takenOn: z.string(), stage: z.string(), caption: z.string() })),
    }),
  ),
  callbacks: z.array(
    z.object({
      id: rowId,
      unit: z.string(),
      state: z.string(),
      urgent: z.boolean(),
      openedOn: z.string(),
      closedOn: dayText,
      attempts: z.array(z.object({ on: z.string(), how: z.string(), outcome: z.string(), note: z.string() })),
      /** e-mails about it, as they were written */
      mails: z.array(
        z.object({ on: z.string(), to: z.string(), subject: z.string(), text: z.string(), state: z.string() }),
      ),
    }),
  ),
});
export type PersonalData = z.infer<typeof personalData>;

/** POST /api/owners/:id/erase, made on the version of the owner that was seen. */
export const eraseOwner = z.strictObject({
  /** why; it stays on record, so it names nobody */
  reason: z.string().trim().min(3, { error: 'expected a reason of at least 3 letters' }).max(200),
});

/** For how many years nothing must have been heard of an owner before what is known of the person goes; null: it stays. */
const years = z
  .int()
  .min(1, { error: 'expected 1 to 50 years' })
  .max(50, { error: 'expected 1 to 50 years' })
  .nullable();

/** An owner of whom nothing was heard for that long. */
const dueOwner = z.object({ id: rowId, name: z.string(), location: z.string(), lastSeenOn: z.string() });

/** GET /api/retention?years= : the setting, and who would be forgotten by it, or by as many years as are asked about. */
export const retention = z.object({ years, version: z.int(), due: z.array(dueOwner), dueCount: z.int() });
export type Retention = z.infer<typeof retention>;

/** PUT /api/retention */
export const changeRetention = z.strictObject({ years });
