import { z } from 'zod';
import { version, type Role } from './common';

/** Who needs a second factor where the shop requires one. */
export const ROLES_WITH_SECOND_FACTOR: readonly Role[] = ['manager', 'administrator'];

/** Six digits of an app, or a recovery code. */
const code = z.string().trim().min(1, { error: 'expected a code' }).max(100);
/** Empty where the person signs in elsewhere and has no password here. */
const ownPassword = z.string().max(1_000);

/** POST /api/session/code: the second step of signing in */
export const signInCode = z.object({ code });

/** GET /api/session/second-factor: how one's own stands */
export const secondFactorView = z.object({
  on: z.boolean(),
  /** the shop requires one of one's role */
  required: z.boolean(),
  recoveryLeft: z.int(),
  hasPassword: z.boolean(),
});
export type SecondFactorView = z.infer<typeof secondFactorView>;

/** POST /api/session/second-factor: begins to set one up */
export const beginSecondFactor = z.object({ password: ownPassword });
/** What beginning answers, once: the secret as it is typed into an app, and the address of the picture. */
export const secondFactorBegun = z.object({ secret: z.string(), address: z.string() });
export type SecondFactorBegun = z.infer<typeof secondFactorBegun>;

/** POST /api/session/second-factor/on, and .../recovery-codes */
export const secondFactorCode = z.object({ code });
/** Recovery codes, shown this once and kept nowhere. */
export const recoveryCodes = z.object({ codes: z.array(z.string()) });
export type RecoveryCodes = z.infer<typeof recoveryCodes>;

/** POST /api/session/second-factor/off */
export const secondFactorOff = z.object({ password: ownPassword, code });

/** PUT /api/settings/sign-in (If-Match): what the shop asks of a sign-in */
export const signInRules = z.object({ secondFactorRequired: z.boolean() });
export type SignInRules = z.infer<typeof signInRules>;

/** GET /api/settings/sign-in */
export const settledSignInRules = signInRules.extend({ version });
export type SettledSignInRules = z.infer<typeof settledSignInRules>;
