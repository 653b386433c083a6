import {
  may,
  TOKEN_SCOPE_NAMES,
  TOKEN_SCOPES,
  type ApiTokenList,
  type ApiTokenMade,
  type Permission,
  type Problem,
  type Role,
  type TokenScope,
  type UnitTrail,
} from '../../libs/contracts';
import { verifyTrail } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Answer } from './api-shop';

const db = withDatabase();
const lines: string[] = [];
let shop: ApiShop;

beforeAll(async () => {
  shop = await ApiShop.open(db, {}, { write: (line) => void lines.push(line) });
}, 300_000);

/** Each spec begins with no wrong token counted. */
beforeEach(() => db.pool.query('DELETE FROM sign_in_try'));

async function made(as: Role, scopes: readonly TokenScope[], name = 'Ledger bridge'): Promise<ApiTokenMade> {
  const answer = await (await shop.as(as)).ask<ApiTokenMade>('POST', '/tokens', { name, scopes, days: 30 });
  if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
  return answer.body;
}

const asks = <T = Problem>(token: string, method: string, path: string, body?: unknown, headers = {}) =>
  shop.anonymous().ask<T>(method, path, body, { authorization: `Bearer ${token}`, ...headers });

const typeOf = ({ status, body }: Answer<Problem>) => `${status} ${body?.type ?? ''}`.trim();

describe('a token', () => {
  it.each(TOKEN_SCOPE_NAMES)(
    'for %s opens each route that the scope names and its maker may, and no other',
    async (scope) => {
      const named = TOKEN_SCOPES[scope].may as readonly Permission[];
      const role = named.some((one) => may('manager', one)) ? 'manager' : 'administrator';
      const { token } = await made(role, [scope]);
      const routes = shop.api.routes.filter(({ permission }) => permission !== 'open');
      const should = (permission: string) =>
        (named as readonly string[]).includes(permission) && may(role, permission as Permission);
      const answers = await Promise.all(
        routes.map(async ({ method, path, permission }) => {
          const { status } = await asks(token, method, path.replace(/:\w+/g, '2000000000'));
          return {
            route: `${method} ${path}`,
            status,
            letIn: status !== 401 && status !== 403,
            should: should(permission!),
          };
        }),
      );
      expect(answers.filter(({ status, letIn, should: ought }) => letIn !== ought || status === 500)).toEqual([]);
      expect(answers.some(({ letIn }) => letIn)).toBe(true);
    },
  );

  it('with every scope still does nothing that only a person may: session, second factor, people, tokens, decisions', async () => {
    const { token } = await made(
      'administrator',
      TOKEN_SCOPE_NAMES.filter((name) => TOKEN_SCOPES[name].may.some((one) => may('administrator', one))),
    );
    const answers = await Promise.all([
      asks(token, 'GET', '/session'),
      asks(token, 'POST', '/session/second-factor', { password: 'x' }),
      asks(token, 'GET', '/people'),
      asks(token, 'GET', '/tokens'),
      asks(token, 'POST', '/tokens', { name: 'another', scopes: ['look-up'], days: 1 }),
      asks(token, 'POST', '/flags/1/decide', {}),
      asks(token, 'PUT', '/settings/sign-in', {}),
    ]);
    expect(answers.map(typeOf)).toEqual(Array.from({ length: 7 }, () => '403 not-by-token'));
  });

  it('is answered once; the database keeps its hash and its first characters, lists and logs no more', async () => {
    const { token, made: view } = await made('manager', ['look-up'], 'Counter till');
    expect(token).toMatch(/^rvr_[\w-]{43}$/);
    expect(view).toMatchObject({
      prefix: token.slice(0, 12),
      state: 'good',
      lastUsedAt: null,
      madeBy: { name: 'The manager' },
    });
    await asks(token, 'GET', '/lines?q=who');
    const { rows } = await db.pool.query<{ all: string }>(
      `SELECT (SELECT string_agg(a::text, ' ') FROM api_token a) || (SELECT string_agg(e::text, ' ') FROM audit_entry e) AS all`,
    );
    const list = await (await shop.as('manager')).get('/tokens');
    for (const text of [rows[0]!.all, JSON.stringify(list.body), lines.join(' ')]) {
      expect(text).toContain(token.slice(0, 12));
      expect(text).not.toContain(token.slice(12));
    }
    expect(lines.join(' ')).not.toContain('q=who');
    expect(JSON.parse(lines.at(-1)!)).toMatchObject({ act: 'token-used', tokenId: view.id });
  });

  it('is noted as used once a minute at most', async () => {
    const { token, made: view } = await made('manager', ['look-up']);
    const used = async () =>
      (
        await db.pool.query<{ at: Date }>('SELECT last_used_at AS at FROM api_token WHERE id = $1', [view.id])
      ).rows[0]!.at.getTime();
    await asks(token, 'GET', '/lines');
    const first = await used();
    shop.clock.nowMs += 59_000;
    await asks(token, 'GET', '/lines');
    expect(await used()).toBe(first);
    shop.clock.nowMs += 1_000;
    await asks(token, 'GET', '/lines');
    expect(await used()).toBe(first + 60_000);
  });

  it('opens nothing once it is revoked, has expired, or its maker has left; the refusal names it', async () => {
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT 'leaver', 'Leaver', 'manager', 1, password_hash FROM person WHERE login = 'manager'`,
    );
    const { token, made: view } = await made('manager', ['look-up'], 'Old till');
    const look = async () => {
      const { status, body } = await asks(token, 'GET', '/lines');
      return `${status} ${body.detail ?? ''}`.trim();
    };
    expect(await look()).toBe('200');
    await db.pool.query(`UPDATE person SET active = false WHERE login = 'leaver'`);
    await db.pool.query(
      `UPDATE api_token SET person_id = (SELECT id FROM person WHERE login = 'leaver') WHERE id = $1`,
      [view.id],
    );
    expect(await look()).toBe(
      "401 The token 'Old till' was made by somebody who does not work here any more; make a new one.",
    );
    await db.pool.query(`UPDATE person SET active = true, role = 'technician' WHERE login = 'leaver'`);
    expect(await look()).toBe('200');
    await db.pool.query(`UPDATE api_token SET expires_at = $2 WHERE id = $1`, [view.id, new Date(shop.clock.nowMs)]);
    expect(await look()).toBe("401 The token 'Old till' has expired; make a new one.");
    const administrator = await shop.as('administrator');
    expect((await administrator.ask('DELETE', `/tokens/${view.id}`)).status).toBe(200);
    expect((await administrator.ask('DELETE', `/tokens/${view.id}`)).status).toBe(409);
    expect(await look()).toBe("401 The token 'Old till' was revoked; make a new one.");
  });

  it("follows the role of its maker at the next request, and the walls of the maker's location", async () => {
    const ticket = await shop.newTicket('17030021');
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT 'mover', 'Mover', 'manager', 2, password_hash FROM person WHERE login = 'manager'`,
    );
    const { token, made: view } = await made('manager', ['read-tickets', 'figures']);
    await db.pool.query(
      `UPDATE api_token SET person_id = (SELECT id FROM person WHERE login = 'mover') WHERE id = $1`,
      [view.id],
    );
    expect((await asks(token, 'GET', `/tickets/${ticket.id}`)).status).toBe(200);
    expect((await asks(token, 'GET', '/figures')).status).toBe(200);
    await db.pool.query(`UPDATE person SET role = 'technician' WHERE login = 'mover'`);
    expect((await asks(token, 'GET', `/tickets/${ticket.id}`)).status).toBe(404);
    expect(typeOf(await asks(token, 'GET', '/figures'))).toBe('403 not-allowed');
  });

  it('is asked for a second factor where its maker still has none and needs one', async () => {
    const { token } = await made('manager', ['look-up']);
    await db.pool.query(`INSERT INTO setting (key, value) VALUES ('second-factor-required', 'true')`);
    expect(typeOf(await asks(token, 'GET', '/lines'))).toBe('403 second-factor-needed');
    await db.pool.query(`DELETE FROM setting WHERE key = 'second-factor-required'`);
  });

  it('changes with a version and a key as a person does; what it changed stands in the trail with its name', async () => {
    const ticket = await shop.newTicket('17030022');
    const [one, other] = [
      await made('manager', ['write-tickets'], 'Intake desk'),
      await made('manager', ['write-tickets']),
    ];
    const change = (token: string, version: number) =>
      asks<{ version: number }>(
        token,
        'PATCH',
        `/tickets/${ticket.id}`,
        { complaint: `Changed on ${version}` },
        {
          'if-match': `"${version}"`,
          'idempotency-key': 'the-same',
        },
      );
    const first = await change(one.token, ticket.version);
    expect(first.status).toBe(200);
    const again = await change(one.token, ticket.version);
    expect([again.status, again.headers.get('idempotent-replayed'), again.body.version]).toEqual([
      200,
      'true',
      first.body.version,
    ]);
    expect((await change(other.token, ticket.version)).status).toBe(412);
    expect((await asks(one.token, 'PATCH', `/tickets/${ticket.id}`, { complaint: 'x' })).status).toBe(428);
    const { body } = await (await shop.as('manager')).get<UnitTrail>(`/units/${ticket.unit.id}/trail`);
    const entry = body.items.find(({ noun, act }) => noun === 'ticket' && act === 'update');
    expect(entry?.by).toBe("The manager by the token 'Intake desk'");
    expect((await verifyTrail(db.pool)).fault).toBeNull();
    const { rows } = await db.pool.query<{ id: string }>(
      `SELECT id FROM audit_entry WHERE token_id IS NOT NULL LIMIT 1`,
    );
    await db.pool.query(`ALTER TABLE audit_entry DISABLE TRIGGER only_added_to`);
    await db.pool.query(`UPDATE audit_entry SET token_id = NULL WHERE id = $1`, [rows[0]!.id]);
    expect((await verifyTrail(db.pool)).fault?.id).toBe(rows[0]!.id);
    await db.pool.query(`UPDATE audit_entry SET token_id = $2 WHERE id = $1`, [rows[0]!.id, one.made.id]);
    await db.pool.query(`ALTER TABLE audit_entry ENABLE TRIGGER only_added_to`);
  });
});

describe('who makes tokens', () => {
  it("sees and revokes their own; an administrator everybody's", async () => {
    const { made: view } = await made('administrator', ['monitoring'], 'Watcher');
    const [manager, administrator] = [await shop.as('manager'), await shop.as('administrator')];
    const names = async (body: ApiTokenList) => Promise.resolve(body.tokens.map(({ name }) => name));
    expect(await names((await manager.get<ApiTokenList>('/tokens')).body)).not.toContain('Watcher');
    expect(await names((await administrator.get<ApiTokenList>('/tokens')).body)).toContain('Watcher');
    expect((await manager.ask('DELETE', `/tokens/${view.id}`)).status).toBe(404);
    const { made: theirs } = await made('manager', ['look-up'], 'Scale at the counter');
    expect(await names((await administrator.get<ApiTokenList>('/tokens')).body)).toContain('Scale at the counter');
    expect((await administrator.ask('DELETE', `/tokens/${theirs.id}`)).status).toBe(200);
  });

  it.each([
    [{ name: '', scopes: ['look-up'], days: 1 }, 'name'],
    [{ name: 'x', scopes: [], days: 1 }, 'scopes'],
    [{ name: 'x', scopes: ['everything'], days: 1 }, 'scopes.0'],
    [{ name: 'x', scopes: ['monitoring'], days: 1 }, 'scopes'],
    [{ name: 'x', scopes: ['look-up'], days: 367 }, 'days'],
    [{ name: 'x', scopes: ['look-up'] }, 'days'],
  ])('is refused by field, with what would be accepted: %j', async (body, field) => {
    const answer = await (await shop.as('manager')).ask<Problem & { field: string }>('POST', '/tokens', body);
    expect([answer.status, answer.body.field]).toEqual([400, field]);
    expect(answer.body.detail).toMatch(/expected/);
  });
});

describe('wrong tokens', () => {
  it('slow their address down after five, are in the log, and hold up no right one', async () => {
    const { token } = await made('manager', ['look-up']);
    const wrong = () => asks('rvr_' + 'A'.repeat(43), 'GET', '/lines');
    const answers = [];
    for (let n = 0; n < 6; n++) answers.push(await wrong());
    expect(answers.map(typeOf)).toEqual([...Array.from({ length: 5 }, () => '401 wrong-token'), '429 too-many-tries']);
    expect(answers.at(-1)!.headers.get('retry-after')).toBe('1');
    expect(lines.map((line) => (JSON.parse(line) as { act: string }).act).slice(-6)).toEqual([
      ...Array.from({ length: 5 }, () => 'wrong-token'),
      'held-up',
    ]);
    expect((await asks(token, 'GET', '/lines')).status).toBe(200);
  });

  it.each(['', 'rvr_', 'x'.repeat(5_000), "' OR 1=1 --", 'a b'])(
    'are refused whatever they hold: %j',
    async (token) => {
      expect(typeOf(await asks(token, 'GET', '/lines'))).toBe(token === '' ? '401 not-signed-in' : '401 wrong-token');
    },
  );
});
