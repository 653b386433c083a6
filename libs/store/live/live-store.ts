import type { LiveStore } from '../../usecases';
import type { Db } from '../db';

/** The channel of hints for open pages. */
export const LIVE_CHANNEL = 'revright_live';

export function liveStore(db: Db): LiveStore {
  return {
    async tell(kind, id) {
      await db.$queryRaw`SELECT 1 AS told FROM pg_notify(${LIVE_CHANNEL}, ${JSON.stringify({ kind, id })})`;
    },
  };
}
