import { z } from 'zod';
import { dayText, line, rowId } from './common';
import { newOwner, unitIdentity } from './unit';

/**
 * What is being taken in, as far as it is written down. It names an owner; a browser's storage is no place for that, so
 * the server keeps it for whoever types it: half a day at most, and until that person opens the ticket or signs out.
 */
export const intakeDraft = z.object({
  ownerId: rowId.nullable(),
  ownerName: line(200),
  owner: newOwner.extend({ name: line(200) }),
  unitId: rowId.nullable(),
  unitName: line(500),
  unit: unitIdentity,
  complaint: line(2_000),
  benchId: rowId.nullable(),
  promisedOn: dayText.nullable(),
});
export type IntakeDraft = z.infer<typeof intakeDraft>;

/** GET and PUT /api/session/draft: null where nothing is begun. */
export const ownIntakeDraft = z.object({ draft: intakeDraft.nullable() });
export type OwnIntakeDraft = z.infer<typeof ownIntakeDraft>;
