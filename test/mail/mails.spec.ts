import type { CallbackView, WrittenToOwners } from '../../libs/contracts';
import { openMailer } from '../../libs/mail';
import { asProgram } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { sendNextMail } from '../../libs/usecases';
import { ApiShop, type Caller } from '../api/api-shop';
import { SmtpShop } from './smtp-shop';

const db = withDatabase();
let shop: ApiShop;
let counter: Caller;
let smtp: SmtpShop;
let mailer: ReturnType<typeof openMailer>;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  counter = await shop.as('counter');
  smtp = await SmtpShop.open();
  mailer = openMailer({ url: smtp.url, from: 'Mill Repairs <shop@example.org>' });
  db.beforeClose(async () => {
    mailer.close();
    await smtp.close();
  });
}, 300_000);

beforeEach(() => {
  smtp.mails.length = smtp.recipients.length = 0;
  smtp.refuse = null;
  smtp.hangUp = false;
});

/** A callback for a new unit of an owner; answers its id. */
async function callback(owner: {
  name?: string;
  email?: string;
  consent?: boolean;
  declined?: string;
}): Promise<number> {
  const { name = 'Ole Brand', email = 'ole@mail.example', consent = true, declined = '{}' } = owner;
  const { rows } = await db.pool.query<{ id: number }>(
    `WITH o AS (INSERT INTO owner (location_id, name, email, consent, declined) VALUES (1, $1, $2, $3, $4) RETURNING id),
          u AS (INSERT INTO unit (owner_id, line_id, model_id, serial, built, built_from, built_to)
                SELECT id, 1, 1, '17030001', '{[17200,17231)}', 17200, 17231 FROM o RETURNING id, owner_id),
          c AS (INSERT INTO callback (unit_id, owner_id) SELECT id, owner_id FROM u RETURNING id)
     INSERT INTO callback_reason (callback_id, source_id, position_id, place, verdict, action, detail)
     SELECT c.id, (SELECT min(id) FROM source), 1, 1, 'outdated', 'call-back', '{"sentence":"The auger pin is no longer right."}'
     FROM c RETURNING callback_id AS id`,
    [name, email, consent, declined],
  );
  return rows[0]!.id;
}

const write = async (...ids: number[]): Promise<WrittenToOwners> => {
  const { status, body } = await counter.ask<WrittenToOwners>('POST', '/callbacks/mails', { ids });
  expect(status).toBe(200);
  return body;
};
const send = () => asProgram(() => sendNextMail(shop, mailer));
const state = async (id: number) => {
  const { body } = await counter.get<CallbackView>(`/callbacks/${id}`);
  return body.mails.map((mail) => mail.state);
};
const due = () =>
  db.pool.query(`UPDATE callback_mail SET next_try_at = now() - interval '1 minute' WHERE state = 'queued'`);

describe('an e-mail to an owner', () => {
  it('waits until a worker sends it, arrives once as text and as HTML, and is an attempt then', async () => {
    const id = await callback({});
    expect((await write(id)).written).toEqual([{ id, name: 'Ole Brand' }]);
    expect([smtp.mails.length, await state(id)]).toEqual([0, ['queued']]);
    expect([await send(), await send()]).toEqual([true, false]);
    const [mail] = smtp.mails;
    expect(smtp.recipients).toEqual([['ole@mail.example']]);
    expect(mail!.from!.value).toEqual([{ name: 'Mill Repairs', address: 'shop@example.org' }]);
    expect(mail!.subject).toBe('About your Snow thrower 2 S2: please call us');
    for (const part of [mail!.text!, String(mail!.html)]) {
      expect(part).toContain('The auger pin is no longer right.');
      expect(part).toContain('serial 17030001');
      expect(part).toContain('take the key or the plug lead off');
    }
    const { body } = await counter.get<CallbackView>(`/callbacks/${id}`);
    expect(body.attempts).toMatchObject([{ how: 'email', outcome: 'sent', by: 'The counter' }]);
    expect(await state(id)).toEqual(['sent']);
  });

  it('goes out once for one callback and wording, however often it is asked for; another wording is another mail', async () => {
    const id = await callback({});
    await Promise.all([write(id), write(id), write(id)]);
    expect((await write(id)).leftOut[0]!.why).toContain('written already');
    while (await send());
    expect(smtp.mails).toHaveLength(1);
    await db.pool.query('UPDATE callback SET urgent = true WHERE id = $1', [id]);
    expect((await write(id)).written).toHaveLength(1);
    while (await send());
    expect(smtp.mails.map(({ subject }) => subject)[1]).toContain('Please stop using');
  });

  it('is sent once where several workers take turns at the same time', async () => {
    const ids = await Promise.all([1, 2, 3, 4, 5].map(() => callback({})));
    await write(...ids);
    const worker = async () => {
      while (await send());
    };
    await Promise.all([worker(), worker(), worker()]);
    expect(smtp.mails).toHaveLength(5);
  });

  it('carries what an owner is called as mere text: no element, no second header, no second recipient', async () => {
    const name = '<script>alert(1)</script>\r\nBcc: all@mail.example';
    const bad = [
      'a@mail.example\r\nBcc: all@mail.example',
      'a@mail.example, b@mail.example',
      'a@mail.example;b@x.example',
    ];
    const id = await callback({ name });
    const refused = await Promise.all(bad.map((email) => callback({ email })));
    const answer = await write(id, ...refused);
    expect(answer.leftOut.map(({ why }) => why)).toEqual(
      bad.map(() => 'The e-mail address cannot be one; look at it again.'),
    );
    while (await send());
    const [mail] = smtp.mails;
    expect(smtp.recipients).toEqual([['ole@mail.example']]);
    expect([...mail!.headers.keys()]).not.toContain('bcc');
    expect(String(mail!.html)).toContain('&lt;script&gt;alert(1)&lt;/script&gt; Bcc: all@mail.example');
    expect(String(mail!.html)).not.toContain('<script');
  });

  it('goes to nobody who has not agreed, or declines e-mails; not even when they say so while it waits', async () => {
    const [never, declines, later] = [
      await callback({ consent: false }),
      await callback({ declined: '{email}' }),
      await callback({}),
    ];
    const answer = await write(never, declines, later);
    expect(answer.written.map(({ id }) => id)).toEqual([later]);
    await db.pool.query(
      `UPDATE owner SET declined = '{email}' WHERE id = (SELECT owner_id FROM callback WHERE id = $1)`,
      [later],
    );
    while (await send());
    expect([smtp.mails.length, await state(later)]).toEqual([0, ['cancelled']]);
  });
});

describe('a mail server', () => {
  it.each(['recipient', 'text'] as const)('that says later (451, %s) is tried again, later', async (at) => {
    const id = await callback({});
    await write(id);
    smtp.refuse = { at, code: 451 };
    expect([await send(), await send()]).toEqual([true, false]);
    expect(await state(id)).toEqual(['queued']);
    smtp.refuse = null;
    await due();
    await send();
    expect([smtp.mails.length, await state(id)]).toEqual([1, ['sent']]);
  });

  it('that says never (550) is not asked again, and the page says what it said', async () => {
    const id = await callback({});
    await write(id);
    smtp.refuse = { at: 'recipient', code: 550 };
    await send();
    const { body } = await counter.get<CallbackView>(`/callbacks/${id}`);
    expect(body.mails).toMatchObject([{ state: 'failed', problem: expect.stringContaining('not today') as string }]);
    expect(body.attempts).toEqual([]);
  });

  it('that hangs up once it has the text leaves it unclear, and the mail is not sent a second time', async () => {
    const id = await callback({});
    await write(id);
    smtp.hangUp = true;
    await send();
    smtp.hangUp = false;
    await due();
    expect([await send(), smtp.mails.length, await state(id)]).toEqual([false, 0, ['unclear']]);
  });

  it('that is away is tried again', async () => {
    const id = await callback({});
    await write(id);
    const away = openMailer({ url: 'smtp://127.0.0.1:1', from: 'shop@example.org' });
    await asProgram(() => sendNextMail(shop, away));
    away.close();
    expect(await state(id)).toEqual(['queued']);
    await due();
    await send();
    expect(await state(id)).toEqual(['sent']);
  });
});

describe('a worker that dies while it sends', () => {
  it('leaves a mail of which nobody knows; it is shown so and not sent again', async () => {
    const id = await callback({});
    await write(id);
    await asProgram(() => shop.store.mails.claim(60));
    await db.pool.query(`UPDATE callback_mail SET leased_until = now() - interval '1 second' WHERE state = 'sending'`);
    expect([await send(), smtp.mails.length, await state(id)]).toEqual([false, 0, ['unclear']]);
  });
});
