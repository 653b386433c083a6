// An OpenID Connect provider on this machine, run as a process of its own because its package is no CommonJS. Told the
// redirect address over the channel to its parent, it answers with its issuer. Anybody may sign in there under any name;
// the e-mail address of 'unverified' is the one it has not verified.
import { createServer } from 'node:http';
import Provider from 'oidc-provider';

const server = createServer((_request, response) => response.writeHead(503).end());
server.listen(0, '127.0.0.1', () => {
  const issuer = `http://127.0.0.1:${server.address().port}`;
  process.on('message', ({ redirectUri, clientId, clientSecret }) => {
    const provider = new Provider(issuer, {
      clients: [
        {
          client_id: clientId,
          client_secret: clientSecret,
          redirect_uris: [redirectUri],
          grant_types: ['authorization_code'],
          response_types: ['code'],
        },
      ],
      claims: { email: ['email', 'email_verified'], profile: ['name'] },
      cookies: { keys: ['only for a test'] },
      findAccount: (_context, id) => ({
        accountId: id,
        claims: () => ({
          sub: `subject-${id}`,
          name: `Known as ${id}`,
          email: `${id}@shop.example`,
          email_verified: id !== 'unverified',
        }),
      }),
    });
    server.removeAllListeners('request');
    server.on('request', provider.callback());
    process.send({ ready: true });
  });
  process.send({ issuer });
});
process.on('disconnect', () => process.exit(0));
