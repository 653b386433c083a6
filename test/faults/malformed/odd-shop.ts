import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { Secret, TOTP } from 'otpauth';
import type { OpenApiDocument } from '../../../apps/api/src/open-api/document';
import { openDatabase, type OpenDatabase } from '../../../libs/testing';
import { ApiShop, Caller, PASSWORD } from '../../api/api-shop';
import { freePort } from '../../../libs/store/embedded';
import type { House } from '../house';
import { WEIGH, type Weight } from '../weighed';

/** Who asks: between them they may do everything. */
export const ODD_ROLES = ['administrator', 'manager', 'technician'] as const;
export type OddRole = (typeof ODD_ROLES)[number];

/**
 * A shop of its own with some tickets, and one API process for it, to which an administrator with a second factor is
 * signed in, and a manager and a technician for what no administrator may.
 */
export class OddShop {
  private constructor(
    private readonly db: OpenDatabase,
    private readonly child: ChildProcess,
    readonly port: number,
    readonly cookies: Readonly<Record<OddRole, string>>,
    readonly document: OpenApiDocument,
    private readonly kept: readonly { readonly person: object; readonly session: object }[],
    /** The last that the process wrote. */
    readonly log: string[],
  ) {}

  static async open(house: House): Promise<OddShop> {
    const db = await openDatabase();
    const shop = await ApiShop.open(db);
    for (const serial of ['17030001', '14020002', '18040003', null])
      await shop.newTicket(serial, serial === null ? { serialAbsent: 'plate gone' } : {});
    const port = await freePort();
    const child = await house.weighedApi(port, {
      DATABASE_URL: db.url,
      REVRIGHT_KEY: 'ab'.repeat(32),
      TRUSTED_PROXIES: 'loopback',
      LOG_LEVEL: 'error',
    });
    const log: string[] = [];
    const note = (piece: Buffer) => void (log.push(piece.toString()), log.splice(0, log.length - 50));
    child.stdout!.on('data', note);
    child.stderr!.on('data', note);
    const url = `http://127.0.0.1:${port}`;
    const administrator = await signedIn(url, 'administrator');
    await addSecondFactor(administrator);
    const manager = await signedIn(url, 'manager');
    const technician = await signedIn(url, 'technician');
    const document = (await administrator.get<OpenApiDocument>('/openapi.json')).body;
    const { rows } = await db.pool.query<{ person: object; session: object }>(
      'SELECT to_jsonb(p) AS person, to_jsonb(s) AS session FROM person p JOIN session s ON s.person_id = p.id',
    );
    const cookies = {
      administrator: administrator.cookie,
      manager: manager.cookie,
      technician: technician.cookie,
    };
    return new OddShop(db, child, port, cookies, document, rows, log);
  }

  /** Everybody is who they were, and signed in, whatever was asked meanwhile. */
  async signInAgain(): Promise<void> {
    for (const { person, session } of this.kept) {
      await this.db.pool.query(
        `UPDATE person p SET login = was.login, role = was.role, active = was.active, password_hash = was.password_hash
         FROM jsonb_populate_record(NULL::person, $1) was WHERE p.id = was.id`,
        [person],
      );
      await this.db.pool.query(
        `INSERT INTO session SELECT (jsonb_populate_record(NULL::session, $1)).*
         ON CONFLICT (token_hash) DO UPDATE SET last_seen_at = now(), expires_at = now() + interval '8 hours'`,
        [session],
      );
    }
  }

  get isRunning(): boolean {
    return this.child.exitCode === null && this.child.signalCode === null;
  }

  /** What the process still holds once all that nothing points to is collected. */
  async weigh(): Promise<Weight> {
    this.child.send(WEIGH);
    const [weight] = (await once(this.child, 'message')) as [Weight];
    return weight;
  }

  async close(): Promise<void> {
    this.child.kill('SIGTERM');
    await new Promise((done) => (this.isRunning ? this.child.once('exit', done) : done(null)));
    await this.db.close();
  }
}

async function signedIn(url: string, login: OddRole): Promise<Caller> {
  const answer = await new Caller(url, '').ask('POST', '/session', { login, password: PASSWORD });
  return new Caller(url, answer.headers.getSetCookie()[0]!.split(';')[0]!);
}

async function addSecondFactor(caller: Caller): Promise<void> {
  const begun = await caller.ask<{ secret: string }>('POST', '/session/second-factor', { password: PASSWORD });
  const code = new TOTP({ secret: Secret.fromBase32(begun.body.secret) }).generate();
  const on = await caller.ask('POST', '/session/second-factor/on', { code });
  if (on.status !== 200)
    throw new Error(`the second factor was answered with ${on.status}: ${JSON.stringify(on.body)}`);
}
