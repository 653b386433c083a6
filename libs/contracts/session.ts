import { z } from 'zod';
import { role, rowId } from './common';
import { reading } from './prints';

/** POST /api/session: 401 with the type `code-needed` where a second step follows */
export const signIn = z.object({ login: z.string().min(1).max(100), password: z.string().min(1).max(1_000) });
export type SignIn = z.infer<typeof signIn>;

/** GET /api/session: who is signed in, and what the page may offer that person. */
export const me = z.object({
  id: rowId,
  login: z.string(),
  name: z.string(),
  role,
  location: z.object({ id: rowId, code: z.string(), name: z.string() }),
  /** `missing` where the shop requires one of the role: nothing else can be done before it is added */
  secondFactor: z.enum(['on', 'off', 'missing']),
  permissions: z.array(z.string()),
  /** how the page writes for this person: their own choice, else the shop's */
  reading,
  /** their own choice; null where they read as the shop does */
  ownReading: reading.nullable(),
});
export type Me = z.infer<typeof me>;

/** GET /api/session/demo: the demo shop's people, so that the sign-in page can name them; empty in a real shop. */
export const demoPeople = z.array(z.object({ login: z.string(), name: z.string(), role }));
export type DemoPeople = z.infer<typeof demoPeople>;
