import type { Pool } from 'pg';
import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import type { Role, TicketView } from '../../libs/contracts';
import { day } from '../../libs/day';
import type { FitRuleFile } from '../../libs/fit-rules';
import { hashPassword, openStore, type OpenStore } from '../../libs/store';
import type { SpecDatabase } from '../../libs/testing';
import type { Clock } from '../../libs/usecases';

export const TODAY = '2026-11-20';
export const PASSWORD = 'a password for the bench';

/** An answer with its status, headers and body. */
export interface Answer<T = unknown> {
  readonly status: number;
  readonly headers: Headers;
  readonly body: T;
}

/** The session of one person, as a browser on our own page would send it. */
export class Caller {
  constructor(
    private readonly url: string,
    readonly cookie: string,
  ) {}

  async ask<T = TicketView>(
    method: string,
    path: string,
    body?: unknown,
    headers: Record<string, string> = {},
  ): Promise<Answer<T>> {
    const response = await fetch(`${this.url}/api${path}`, {
      method,
      headers: {
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(this.cookie === '' ? {} : { cookie: this.cookie }),
        ...headers,
      },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
    const text = await response.text();
    const isJson = response.headers.get('content-type')?.includes('json') === true;
    return {
      status: response.status,
      headers: response.headers,
      body: (isJson && text !== '' ? JSON.parse(text) : null) as T,
    };
  }

  /** One file as a form. */
  async upload<T>(path: string, { name, text }: { name: string; text: string | Buffer }): Promise<Answer<T>> {
    const form = new FormData();
    form.append('file', new Blob([typeof text === 'string' ? text : new Uint8Array(text)]), name);
    return this.send<T>(path, form);
  }

  /** Sends a form with a file in it. */
  async send<T = TicketView>(path: string, form: FormData): Promise<Answer<T>> {
    const response = await fetch(`${this.url}/api${path}`, {
      method: 'POST',
      headers: { cookie: this.cookie },
      body: form,
    });
    return { status: response.status, headers: response.headers, body: (await response.json()) as T };
  }

  get<T = TicketView>(path: string): Promise<Answer<T>> {
    return this.ask<T>('GET', path);
  }

  /** Settles something anew on the version it has now. */
  async settle<T>(method: 'PUT' | 'PATCH', path: string, body: unknown): Promise<Answer<T>> {
    const { version } = (await this.get<{ version: number }>(path)).body;
    return this.change<T>(method, path, version, body);
  }

  /** A change of what has a version, made on that version. */
  change<T = TicketView>(method: string, path: string, version: number, body?: unknown): Promise<Answer<T>> {
    return this.ask<T>(method, path, body, { 'if-match': `"${version}"` });
  }
}

const openSpan = { from: '2010-01-01', to: null };

/** A rule on line SNOW-2 with everything that does not matter left open. */
export function rule(key: string, more: Partial<FitRuleFile>): FitRuleFile {
  return {
    key,
    version: 1,
    line: 'SNOW-2',
    models: [],
    options: [],
    positions: ['AUG-PIN'],
    built: { from: null, to: null },
    serials: null,
    inForce: openSpan,
    known: { from: '2010-01-01T00:00:00.000Z', to: null },
    source: 'PL-7',
    required: null,
    allowed: [],
    barred: [],
    action: 'nothing',
    replaces: [],
    ...more,
  };
}

/**
 * A shop with one line, the invented snow thrower SNOW-2 of the invented maker Holmgard, made 2012 to 2020. Its auger
 * pin has two places; up to the end of 2015 it takes 70-412A, from then on 70-412B; 70-499 is a harder bolt that is
 * barred. Its belt has one place and takes 80-001, or 80-002 too. Four people work here, one of each role.
 */
export class ApiShop {
  private callers = new Map<Role, Caller>();
  private elsewherePeople = 0;

  private constructor(
    readonly api: RunningApi,
    readonly store: OpenStore,
    readonly pool: Pool,
    readonly clock: { nowMs: number; today: number },
  ) {}

  /** With further variables of the environment, where a spec is about them. */
  static async open(
    db: SpecDatabase,
    env: Record<string, string> = {},
    securityLog?: { write(line: string): void },
  ): Promise<ApiShop> {
    const store = openStore({ url: db.url, poolSize: 6 });
    db.beforeClose(() => store.close());
    await fill(db.pool, store);
    const held = { nowMs: Date.parse(`${TODAY}T10:00:00Z`), today: day(TODAY) };
    const clock: Clock = { now: () => held.nowMs, today: () => held.today };
    const read = readConfig({
      PORT: '0',
      DATABASE_URL: db.url,
      LOG_LEVEL: 'error',
      // The API keeps mails and sends none; a worker would.
      SMTP_URL: 'smtp://127.0.0.1:1',
      MAIL_FROM: 'The shop <shop@example.org>',
      REVRIGHT_DEMO: 'false',
      REVRIGHT_KEY: 'ab'.repeat(32),
      ...env,
    });
    if (!read.ok) throw new Error(read.problems.join(' '));
    const logged = securityLog ? { config: { ...read.config, logLevel: 'info' as const }, securityLog } : {};
    const api = await startApi({ config: read.config, store, clock, ...logged });
    db.beforeClose(() => api.close());
    return new ApiShop(api, store, db.pool, held);
  }

  anonymous(): Caller {
    return new Caller(this.api.url, '');
  }

  async signIn(login: string, password: string): Promise<Answer<unknown>> {
    return this.anonymous().ask('POST', '/session', { login, password });
  }

  /** The person with that role, signed in once. */
  async as(role: Role): Promise<Caller> {
    const known = this.callers.get(role);
    if (known) return known;
    const caller = await this.signedIn(role);
    this.callers.set(role, caller);
    return caller;
  }

  /** Somebody new with that role, of the second location, signed in. */
  async elsewhere(role: Role): Promise<Caller> {
    const login = `elsewhere-${++this.elsewherePeople}`;
    await this.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT $1, 'Far', $2, 2, password_hash FROM person WHERE login = 'manager'`,
      [login, role],
    );
    return this.signedIn(login);
  }

  private async signedIn(login: string): Promise<Caller> {
    const answer = await this.signIn(login, PASSWORD);
    return new Caller(this.api.url, answer.headers.get('set-cookie')!.split(';')[0]!);
  }

  /** A ticket for a new unit with the given serial, as it is after opening. */
  async newTicket(serial: string | null, more: Record<string, unknown> = {}): Promise<TicketView> {
    const counter = await this.as('counter');
    const unit = { lineCode: 'SNOW-2', modelNumber: 'S2', serial, serialAbsent: null, plate: 'SNOW-2', ...more };
    const answer = await counter.ask('POST', '/tickets', {
      owner: { name: 'Ole Brand', phone: '555 0101', consent: true },
      unit,
      complaint: 'Auger does not turn',
    });
    if (answer.status !== 201) throw new Error(JSON.stringify(answer.body));
    return answer.body;
  }
}

async function fill(pool: Pool, store: OpenStore): Promise<void> {
  const hash = await hashPassword(PASSWORD);
  const scheme = {
    id: 'HOLM-DATED',
    maker: 'HOLM',
    lines: [],
    name: 'year, month, running number',
    validFrom: null,
    validTo: null,
    fields: [{ kind: 'year-two-digits' }, { kind: 'month-number' }, { kind: 'sequence', length: 4 }],
  };
  const bolt = (grade: string) => ({
    diameterMm: 8,
    lengthMm: 50,
    grade: { kind: 'known', system: 'ISO 898-1', grade },
  });
  const joint = { shaftRadiusMm: 15, planes: 2, ratedTorqueNm: 600 };
  await pool.query(`
    INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop'), (2, 'FAR', 'Far shop');
    INSERT INTO bench (id, location_id, code, name) VALUES (1, 1, 'B1', 'Snow'), (2, 2, 'F1', 'Far bench');
    INSERT INTO maker (id, code, name, number_rules) VALUES (1, 'HOLM', 'Holmgard',
      '{"makerCode":"HOLM","noise":"-","packMarks":[{"before":"/P","after":""}],"trailingLetterIsRevision":true}');
    INSERT INTO product_line (id, code, maker_id, name, kind, options, produced_from, produced_until)
      VALUES (1, 'SNOW-2', 1, 'Snow thrower 2', 'snow thrower', '[{"code":"cab","name":"Cab"}]', '2012-01-01', '2021-01-01');
    INSERT INTO model (id, line_id, number, name) VALUES (1, 1, 'S2', 'Two'), (2, 1, 'S2W', 'Two wide');
    INSERT INTO source (key, kind, publisher, number, title, issued, received, state, published_at)
      VALUES ('PL-7', 'parts-list', 'Holmgard', 'PL-7', 'Parts list', '2010-01-01', '2010-01-01', 'published', '2010-01-01');
  `);
  for (const role of ['technician', 'counter', 'manager', 'administrator']) {
    await pool.query('INSERT INTO person (login, name, role, location_id, password_hash) VALUES ($1, $2, $1, 1, $3)', [
      role,
      `The ${role}`,
      hash,
    ]);
  }
  await pool.query('INSERT INTO serial_scheme (maker_id, code, scheme) VALUES (1, $1, $2)', [scheme.id, scheme]);
  await pool.query(
    `INSERT INTO position (id, line_id, code, name, assembly, places, place_names, sort_order, joint) VALUES
       (1, 1, 'AUG-PIN', 'Auger pin', 'Auger', 2, '{left,right}', 1, $1),
       (2, 1, 'BELT', 'Belt', 'Drive', 1, '{belt}', 2, NULL)`,
    [joint],
  );
  const parts: [string, string, object | null, number][] = [
    ['70-412A', 'Auger pin, early', bolt('4.6'), 250],
    ['70-412B', 'Auger pin, late', bolt('5.8'), 275],
    ['70-499', 'Bolt', bolt('10.9'), 90],
    ['80-001', 'Belt', null, 1_900],
    ['80-002', 'Belt, other', null, 1_950],
  ];
  for (const [number, name, fastener, price] of parts) {
    const canonical = number.replace('-', '');
    await pool.query(
      'INSERT INTO part (key, maker_id, number, canonical, name, fastener, price_minor) VALUES ($1, 1, $2, $3, $4, $5, $6)',
      [`HOLM/${canonical}`, number, canonical, name, fastener && JSON.stringify(fastener), price],
    );
  }
  const barred = [{ part: 'HOLM/70499', reason: 'breaks-later' as const, note: 'the gear case breaks first' }];
  await store.transaction(async (tx) => {
    const { revision } = await tx.rulebook.addRevision({ cause: 'seed', sourceId: null, personId: null });
    await tx.rulebook.open(
      [
        rule('PIN-EARLY', { built: { from: null, to: '2016-01-01' }, required: 'HOLM/70412A', barred }),
        rule('PIN-LATE', { built: { from: '2016-01-01', to: null }, required: 'HOLM/70412B', barred }),
        rule('BELT-ANY', { positions: ['BELT'], required: 'HOLM/80001', allowed: ['HOLM/80002'] }),
      ],
      revision,
    );
  });
}
