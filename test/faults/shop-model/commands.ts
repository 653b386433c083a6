import fc, { type Arbitrary, type AsyncCommand, type Scheduler } from 'fast-check';
import type { CallbackView, FlagView } from '../../../libs/contracts';
import { SAFETY_POINTS } from '../../../libs/ticket';
import { rule, type Answer, type ApiShop, type Caller } from '../../api/api-shop';
import { goesOn, inStage, STAGES, type ModelTicket, type ShopModel } from './model';

/** The running shop and its three people. */
export interface RealShop {
  readonly shop: ApiShop;
  readonly technician: Caller;
  readonly counter: Caller;
  readonly manager: Caller;
  /** Decides in which order those who ask at once are let through; null where nobody does. */
  readonly scheduler: Scheduler | null;
  /** Counts what was run. */
  readonly ran: { commands: number; stale: number; races: number };
}

type Command = AsyncCommand<ShopModel, RealShop>;
interface Versioned {
  readonly version: number;
}

const FOUND = ['AUG-PIN 1 HOLM/70412B sound', 'AUG-PIN 2 HOLM/70412B sound', 'BELT 1 HOLM/80001 worn'];
/** A step of the ticket's line that is asked with a version nobody has is refused, and nothing of it is there. */
const NEVER_SEEN = 1_000;
const JUDGED_WITHIN_MS = 30_000;
const ASK_ANYWAY_MS = 250;

const refusedAs = (answer: Answer, ...statuses: number[]): void => {
  if (!statuses.includes(answer.status))
    throw new Error(`answered ${answer.status}, not ${statuses.join(' or ')}: ${JSON.stringify(answer.body)}`);
};

function taken<T extends Versioned>(answer: Answer<T>): T {
  refusedAs(answer, 200, 201);
  return answer.body;
}

/** What one of the three does to the ticket it chooses among those for which it can be done. */
function onTicket(
  name: string,
  may: (ticket: ModelTicket) => boolean,
  act: (ticket: ModelTicket, real: RealShop, fresh: boolean) => Promise<void>,
): Arbitrary<Command> {
  return fc.tuple(fc.nat(), fc.integer({ min: 0, max: 9 })).map(([n, luck]): Command => {
    const fresh = luck > 1;
    const chosen = ({ tickets }: ShopModel) => {
      const possible = tickets.filter(may);
      return possible[n % possible.length];
    };
    return {
      check: (model) => chosen(model) !== undefined,
      run: async (model, real) => {
        real.ran.commands++;
        if (!fresh) real.ran.stale++;
        await act(chosen(model)!, real, fresh);
      },
      toString: () => `${name}(${n}${fresh ? '' : ', stale'})`,
    };
  });
}

/** One change of a ticket; true when it was taken, and the model's version is the answer's. */
async function changed(
  ticket: ModelTicket,
  by: Caller,
  [method, path, body]: readonly [string, string, unknown],
  fresh = true,
): Promise<boolean> {
  const answer = await by.change(
    method,
    `/tickets/${ticket.id}${path}`,
    ticket.version + (fresh ? 0 : NEVER_SEEN),
    body,
  );
  if (!fresh) {
    refusedAs(answer, 412);
    return false;
  }
  ticket.version = taken(answer).version;
  return true;
}

async function stepTo(ticket: ModelTicket, { technician }: RealShop, to: ModelTicket['stage']): Promise<void> {
  await changed(ticket, technician, ['POST', '/stage', { to }]);
  ticket.stage = to;
}

let serials = 0;

/** A unit comes in with a serial of its own. */
export async function takeIn({ tickets }: ShopModel, { shop, ran }: RealShop): Promise<void> {
  ran.commands++;
  const n = ++serials;
  const serial = `17${String(3 + Math.floor(n / 10_000)).padStart(2, '0')}${String(n % 10_000).padStart(4, '0')}`;
  const { id, version, complaint } = await shop.newTicket(serial);
  tickets.push({ id, version, serial, complaint, stage: 'intake', out: false, records: [], pick: null, paper: null });
}

const intake: Arbitrary<Command> = fc.constant({
  check: ({ tickets }: ShopModel) => tickets.length < 4,
  run: takeIn,
  toString: () => 'intake',
});

const inspect = onTicket(
  'inspect',
  (ticket) => goesOn(ticket) && ticket.stage === 'intake',
  async (ticket, real, fresh) => {
    if (!(await changed(ticket, real.technician, ['POST', '/stage', { to: 'inspection' }], fresh))) return;
    ticket.stage = 'inspection';
    const places = FOUND.map((text) => {
      const [position, place, part, condition] = text.split(' ');
      return { position, place: Number(place), partText: part!.slice('HOLM/'.length), condition };
    });
    await changed(ticket, real.technician, ['PUT', '/places', { side: 'found', places }]);
    ticket.records.push(...FOUND.map((text) => `found ${text}`));
  },
);

const chooseParts = onTicket(
  'choose parts',
  (ticket) => goesOn(ticket) && ticket.stage === 'inspection',
  async (ticket, real, fresh) => {
    const word = { by: 'Ole Brand', how: 'phone', amountMinor: 50_000 };
    if (!(await changed(ticket, real.counter, ['POST', '/authorisation', word], fresh))) return;
    await stepTo(ticket, real, 'parts-selection');
    const part = { position: 'BELT', partText: '80-001', quantity: 1, purpose: 'fit' };
    await changed(ticket, real.technician, ['POST', '/picks', part]);
    ticket.pick = 'picked';
  },
);

const repair = onTicket(
  'repair',
  (ticket) => goesOn(ticket) && ticket.stage === 'parts-selection',
  async (ticket, real, fresh) => {
    const checks = SAFETY_POINTS.map(({ id }) => id);
    if (!(await changed(ticket, real.technician, ['PUT', '/safety', { checks }], fresh))) return;
    await stepTo(ticket, real, 'repair');
    const places = [{ position: 'BELT', place: 1, partText: '80-001' }];
    await changed(ticket, real.technician, ['PUT', '/places', { side: 'left', places }]);
    ticket.records.push('left BELT 1 HOLM/80001');
    ticket.pick = 'fitted';
  },
);

const handOver = onTicket(
  'hand over',
  (ticket) => goesOn(ticket) && ticket.stage === 'repair',
  async (ticket, real, fresh) => {
    if (!(await changed(ticket, real.technician, ['POST', '/stage', { to: 'handover' }], fresh))) return;
    ticket.stage = 'handover';
    await changed(ticket, real.counter, ['POST', '/stage', { to: 'handed-over' }]);
    ticket.out = true;
  },
);

const skipStage = onTicket(
  'skip a stage',
  (ticket) => goesOn(ticket) && inStage(ticket) < 3,
  async (ticket, { technician }) => {
    const to = STAGES[inStage(ticket) + 2];
    refusedAs(await technician.change('POST', `/tickets/${ticket.id}/stage`, ticket.version, { to }), 409);
  },
);

const writeBulletin = onTicket(
  'write a bulletin',
  (ticket) => ticket.paper === null && (ticket.stage === 'inspection' || ticket.out),
  async (ticket, { manager }) => {
    const key = (serial: number) =>
      `2017.${ticket.serial.slice(2, 4).padStart(3, '0')}.${String(serial).padStart(12, '0')}`;
    const n = Number(ticket.serial.slice(4));
    const serialSpan = { scheme: 'HOLM-DATED', from: key(n), to: key(n + 1) };
    const opens = [
      rule(`OTHER-BELT-${ticket.id}`, {
        positions: ['BELT'],
        serials: serialSpan,
        required: 'HOLM/80002',
        action: 'call-back',
      }),
    ];
    const body = {
      ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: `SB ${ticket.id}`, title: 'The other belt' },
      ...{ issued: '2026-10-01', received: '2026-10-20', draft: { opens, ends: [] } },
    };
    const { id, version } = taken(await manager.ask<{ id: number } & Versioned>('POST', '/bulletins', body));
    ticket.paper = { id, version, state: 'draft', follows: null };
  },
);

const publish = onTicket(
  'publish',
  ({ paper, stage, out }) => paper?.state === 'draft' && (stage === 'inspection' || out),
  async ({ paper, out }, { shop, manager }, fresh) => {
    const { revision: whatIfRevision } = await shop.store.rulebook.latest();
    const path = `/bulletins/${paper!.id}/publish`;
    const version = paper!.version + (fresh ? 0 : NEVER_SEEN);
    const answer = await manager.change<{ bulletin: Versioned }>('POST', path, version, { whatIfRevision });
    if (!fresh) return refusedAs(answer, 412);
    refusedAs(answer, 200);
    Object.assign(paper!, { version: answer.body.bulletin.version, state: 'published' });
    paper!.follows = { kind: out ? 'callback' : 'flag', state: 'open', why: '' };
    await judged(shop);
  },
);

const withdraw = onTicket(
  'withdraw',
  ({ paper }) => paper?.state === 'published',
  async ({ paper }, { shop, manager }, fresh) => {
    const path = `/bulletins/${paper!.id}/withdraw`;
    const version = paper!.version + (fresh ? 0 : NEVER_SEEN);
    const answer = await manager.change<{ bulletin: Versioned }>('POST', path, version, { reason: 'printed in error' });
    if (!fresh) return refusedAs(answer, 412);
    refusedAs(answer, 200);
    Object.assign(paper!, { version: answer.body.bulletin.version, state: 'withdrawn' });
    await judged(shop);
    const { follows } = paper!;
    if (follows?.state === 'open') follows.state = follows.kind === 'flag' ? 'cleared' : 'withdrawn';
  },
);

const follows = (kind: 'flag' | 'callback') => (ticket: ModelTicket) =>
  ticket.paper?.follows?.kind === kind && ticket.paper.follows.state === 'open';

/** The flag, or the call, that is open about the ticket's unit. */
async function openAbout({ shop, manager }: RealShop, ticket: ModelTicket): Promise<{ path: string; version: number }> {
  const kind = ticket.paper!.follows!.kind;
  const { rows } = await shop.pool.query<{ id: number }>(
    kind === 'flag'
      ? `SELECT id FROM flag WHERE ticket_id = $1 AND state = 'open'`
      : `SELECT c.id FROM callback c JOIN ticket t ON t.unit_id = c.unit_id WHERE t.id = $1 AND c.state = 'open'`,
    [ticket.id],
  );
  const path = `/${kind}s/${rows[0]!.id}`;
  if (kind === 'callback')
    return { path: `${path}/settle`, version: (await manager.get<CallbackView>(path)).body.version };
  const flags = (await manager.get<FlagView[]>('/flags?state=open')).body;
  return { path: `${path}/decide`, version: flags.find(({ id }) => id === rows[0]!.id)!.version };
}

const decision = (kind: 'flag' | 'callback', reason: string) =>
  kind === 'flag' ? { decision: 'accept', reason, until: '2026-12-31' } : { outcome: 'part-sent', reason };
const AFTERWARDS = { flag: 'accepted', callback: 'settled' } as const;

/**
 * What was decided about a flag is written on its ticket, which whoever works on it must then look at again; how a call
 * ended is written before its reason.
 */
function decided(ticket: ModelTicket, reason: string): void {
  const { kind } = ticket.paper!.follows!;
  const why = kind === 'flag' ? reason : `The part was sent to the owner: ${reason}`;
  Object.assign(ticket.paper!.follows!, { state: AFTERWARDS[kind], why });
  if (kind === 'flag') ticket.version++;
}

const decide = (kind: 'flag' | 'callback', name: string) =>
  onTicket(name, follows(kind), async (ticket, real, fresh) => {
    const { path, version } = await openAbout(real, ticket);
    const reason = `${name} of ${ticket.id}`;
    const answer = await real.manager.change<Versioned>(
      'POST',
      path,
      version + (fresh ? 0 : NEVER_SEEN),
      decision(kind, reason),
    );
    if (!fresh) return refusedAs(answer, 412);
    refusedAs(answer, 200);
    decided(ticket, reason);
  });

const changeSetting: Arbitrary<Command> = fc
  .tuple(fc.integer({ min: 24, max: 60 }), fc.integer({ min: 0, max: 9 }))
  .map(([lookBackMonths, luck]) => {
    const fresh = luck > 2;
    return {
      check: () => true,
      run: async (model: ShopModel, { shop, manager, ran }: RealShop) => {
        ran.commands++;
        if (!fresh) ran.stale++;
        const version = model.setting.version + (fresh ? 0 : NEVER_SEEN);
        const answer = await manager.change<Versioned>('PATCH', '/settings', version, { lookBackMonths });
        if (!fresh) return refusedAs(answer, 412);
        model.setting = { version: taken(answer).version, lookBackMonths };
        await judged(shop);
      },
      toString: () => `look back ${lookBackMonths}${fresh ? '' : ', stale'}`,
    };
  });

/**
 * All that was ordered to be judged again has been. Asked whenever the shop tells of something, and now and then: asking
 * on and on keeps a machine from the judging.
 */
async function judged({ pool, store }: ApiShop): Promise<void> {
  let wake: () => void = () => undefined;
  const stop = store.hints.follow('live', () => wake());
  try {
    for (const end = Date.now() + JUDGED_WITHIN_MS; Date.now() < end;) {
      const told = new Promise<void>((resolve) => (wake = resolve));
      const { rows } = await pool.query(`SELECT 1 FROM recheck WHERE state <> 'done' LIMIT 1`);
      if (rows.length === 0) return;
      const timer = setTimeout(() => wake(), ASK_ANYWAY_MS);
      await told;
      clearTimeout(timer);
    }
  } finally {
    stop();
  }
  throw new Error(`a recheck did not end within ${JUDGED_WITHIN_MS} ms`);
}

/** All three write what the tag says at once, on the same version: one of them does, the others are told. */
const race = onTicket(
  'race for the tag',
  ({ out }) => !out,
  async (ticket, real) => {
    const people = ['technician', 'counter', 'manager'] as const;
    const { version } = ticket;
    const answers = await atOnce(real, people, async (who) => {
      const body = { complaint: `${who} at v${version}` };
      return { who, answer: await real[who].change('PATCH', `/tickets/${ticket.id}`, version, body) };
    });
    const won = answers.filter(({ answer }) => answer.status === 200);
    if (won.length !== 1) throw new Error(`${won.length} of three wrote the tag`);
    for (const { answer } of answers) refusedAs(answer, 200, 412);
    ticket.version = won[0]!.answer.body.version;
    ticket.complaint = `${won[0]!.who} at v${version}`;
  },
);

/** Two tabs of one manager decide about the same flag or call at once. */
const raceToDecide = onTicket(
  'race to decide',
  (ticket) => follows('flag')(ticket) || follows('callback')(ticket),
  async (ticket, real) => {
    const open = ticket.paper!.follows!;
    const { path, version } = await openAbout(real, ticket);
    const answers = await atOnce(real, ['one tab', 'the other tab'], async (why) => ({
      why,
      answer: await real.manager.change<Versioned>('POST', path, version, decision(open.kind, why)),
    }));
    const won = answers.filter(({ answer }) => answer.status === 200);
    if (won.length !== 1) throw new Error(`${won.length} of two decided: ${JSON.stringify(answers)}`);
    for (const { answer } of answers) refusedAs(answer, 200, 409, 412);
    decided(ticket, won[0]!.why);
  },
);

/** Lets each through in the order the scheduler draws, without waiting for the answer of the one before. */
async function atOnce<W, T>(real: RealShop, who: readonly W[], ask: (who: W) => Promise<T>): Promise<T[]> {
  const { scheduler, ran } = real;
  ran.races++;
  if (!scheduler) return Promise.all(who.map(ask));
  const all = Promise.all(who.map((one) => scheduler.schedule(Promise.resolve(one)).then(ask)));
  await scheduler.waitFor(all);
  return all;
}

const LINE = [intake, inspect, chooseParts, repair, handOver, skipStage, writeBulletin, publish, withdraw];
const DECISIONS = [decide('flag', 'accept'), decide('callback', 'settle')];

export const commands = [...LINE, ...DECISIONS, changeSetting];
export const racingCommands = [...commands, race, raceToDecide];
