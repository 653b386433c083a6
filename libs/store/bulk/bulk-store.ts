import type { BulkStore } from '../../usecases';
import type { Db } from '../db';
import { catalogueActions } from './bulk-catalogue';
import { documentActions } from './bulk-document';
import { lineActions } from './bulk-lines';
import { ownerActions } from './bulk-owners';
import { ticketActions } from './bulk-tickets';
import { unitActions } from './bulk-units';

/** Rows as sets, a few statements for each call. */
export function bulkStore(db: Db, zone: string): BulkStore {
  return {
    keepTrailByBatch: async () => void (await db.$executeRaw`SELECT audit_begin_batches()`),
    ...catalogueActions(db),
    ...lineActions(db),
    ...documentActions(db),
    ...ownerActions(db),
    ...unitActions(db),
    ...ticketActions(db, zone),
  };
}
