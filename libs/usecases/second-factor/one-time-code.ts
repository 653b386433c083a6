import { Secret, TOTP } from 'otpauth';

/**
 * One-time codes by RFC 6238 as every authenticator app reads them: six digits of HMAC-SHA-1, a new one each half
 * minute. The secret has 160 bits, as RFC 4226 recommends.
 */
const PERIOD_S = 30;
/** A code of the step before or after is taken too, because clocks differ (RFC 6238, 5.2). */
const WINDOW = 1;

/** A fresh secret in Base32, as it is typed into an app. */
export function newSecret(): string {
  return new Secret({ size: 20 }).base32;
}

/** What the app reads from the picture. */
export function addressFor(secret: string, login: string): string {
  return totp(secret, login).toString();
}

/** The number of the time step a code belongs to, counted from 1970; null when it is no code of now. */
export function stepOf(secret: string, code: string, now: number): number | null {
  const delta = totp(secret).validate({ token: code, timestamp: now, window: WINDOW });
  return delta === null ? null : Math.floor(now / 1_000 / PERIOD_S) + delta;
}

function totp(secret: string, label = ''): TOTP {
  return new TOTP({
    issuer: 'Revright',
    label,
    algorithm: 'SHA1',
    digits: 6,
    period: PERIOD_S,
    secret: Secret.fromBase32(secret),
  });
}
