import { createHmac, randomBytes } from 'node:crypto';

const MARK = 'whsec_';

/** A fresh secret to sign with, 256 bits, in the form Standard Webhooks gives it: `whsec_` and base64. */
export function newWebhookSecret(): string {
  return MARK + randomBytes(32).toString('base64');
}

/**
 * The headers of a signed event as Standard Webhooks 1.0.0 lays them out: its id, the second it is sent in, and
 * `v1,` with the base64 of HMAC-SHA256 over `id.second.body` under the secret's bytes.
 */
export function signedHeaders(
  secret: string,
  { id, second, body }: { readonly id: string; readonly second: number; readonly body: string },
): Record<string, string> {
  const key = Buffer.from(secret.slice(MARK.length), 'base64');
  const signature = createHmac('sha256', key).update(`${id}.${second}.${body}`).digest('base64');
  return { 'webhook-id': id, 'webhook-timestamp': String(second), 'webhook-signature': `v1,${signature}` };
}
