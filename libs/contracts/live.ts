import { z } from 'zod';

/** GET /api/live: server-sent events; each is a hint that something changed, the state itself is fetched anew. */
export const liveEvent = z.object({ kind: z.string(), id: z.int().nullable() });
export type LiveEvent = z.infer<typeof liveEvent>;
