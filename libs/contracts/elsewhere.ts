import { z } from 'zod';

/** GET /api/session/elsewhere: what the other way of signing in is called; null when there is none. */
export const elsewhereOffered = z.object({ name: z.string().nullable() });
export type ElsewhereOffered = z.infer<typeof elsewhereOffered>;

/** POST /api/session/elsewhere: where the browser is to go. */
export const elsewhereBegun = z.object({ address: z.url() });

/** POST /api/session/elsewhere/back: with what it came back. */
export const elsewhereBack = z.object({
  query: z.string().max(4_000).regex(/^\?/, { error: 'expected what stands behind the question mark, with it' }),
});
