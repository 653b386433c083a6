import type * as openIdClient from 'openid-client';
import type { OpenIdConfig } from '../../../../libs/config';
import type { Elsewhere, FoundElsewhere } from '../../../../libs/usecases';

type Client = typeof openIdClient;
type Configuration = openIdClient.Configuration;

/** The provider does not answer, or not as one. */
export class ElsewhereAwayError extends Error {
  constructor(cause: unknown) {
    super('the other sign-in does not answer', { cause });
  }
}

/**
 * Signing in with an OpenID Connect provider: the code flow with PKCE, state and nonce. The library checks issuer,
 * audience, times and nonce of the ID token, and here its signature too. Loaded and asked for its addresses when
 * somebody first wants to sign in with it; one that did not answer is asked again the next time.
 */
export function openId({ issuer, clientId, clientSecret, name }: OpenIdConfig): Elsewhere {
  let known: Promise<{ client: Client; config: Configuration }> | null = null;
  const discovered = async () => {
    const client = await import('openid-client');
    const plain = new URL(issuer).protocol === 'http:' ? [client.allowInsecureRequests] : [];
    const execute = [client.enableNonRepudiationChecks, ...plain];
    const config = await client.discovery(new URL(issuer), clientId, clientSecret, undefined, { execute, timeout: 10 });
    return { client, config };
  };
  const provider = () =>
    (known ??= discovered().catch((error: unknown) => {
      known = null;
      throw new ElsewhereAwayError(error);
    }));
  return {
    name,
    async begin(backTo) {
      const { client, config } = await provider();
      const remember = {
        state: client.randomState(),
        nonce: client.randomNonce(),
        verifier: client.randomPKCECodeVerifier(),
      };
      const address = client.buildAuthorizationUrl(config, {
        redirect_uri: backTo,
        scope: 'openid profile email',
        state: remember.state,
        nonce: remember.nonce,
        code_challenge: await client.calculatePKCECodeChallenge(remember.verifier),
        code_challenge_method: 'S256',
      });
      return { address: address.href, remember };
    },
    async finish(cameBack, { state, nonce, verifier }) {
      const { client, config } = await provider();
      const checks = { expectedState: state, expectedNonce: nonce, pkceCodeVerifier: verifier, idTokenExpected: true };
      try {
        return await found(client, config, await client.authorizationCodeGrant(config, new URL(cameBack), checks));
      } catch (error) {
        if (isRefusal(client, error)) return null;
        throw new ElsewhereAwayError(error);
      }
    },
  };
}

type Tokens = Awaited<ReturnType<Client['authorizationCodeGrant']>>;

async function found(client: Client, config: Configuration, tokens: Tokens): Promise<FoundElsewhere | null> {
  const claims = tokens.claims();
  if (!claims) return null;
  const asked = config.serverMetadata().userinfo_endpoint !== undefined;
  const more = asked ? await client.fetchUserInfo(config, tokens.access_token, claims.sub) : {};
  const { email, email_verified: verified, name }: Record<string, unknown> = { ...claims, ...more };
  return {
    issuer: claims.iss,
    subject: claims.sub,
    email: verified === true && typeof email === 'string' ? email.toLowerCase() : null,
    name: typeof name === 'string' ? name : null,
  };
}

/** What the browser came back with is not good; anything else is the provider's or the network's fault. */
function isRefusal(client: Client, error: unknown): boolean {
  return (
    error instanceof client.AuthorizationResponseError ||
    error instanceof client.ResponseBodyError ||
    (error instanceof client.ClientError && error.code !== 'OAUTH_TIMEOUT')
  );
}
