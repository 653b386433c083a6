import type { Config } from '../../../libs/config';
import { dayOfInstant } from '../../../libs/day';
import {
  checkRedis,
  handlersByJob,
  repeat,
  startInProcess,
  startQueueWorker,
  startRelay,
  type Handler,
  type Running,
} from '../../../libs/queue';
import { openMailer } from '../../../libs/mail';
import { openCourier } from '../../../libs/courier';
import { asProgram, sealsOf } from '../../../libs/store';
import {
  deliverNextEvent,
  dropOldSheets,
  forgetDueOwners,
  forgetOldEvents,
  mailInForce,
  sendNextMail,
  sweepRechecks,
  type Clock,
  type Mailer,
  type MailServer,
  type Ports,
  type Store,
} from '../../../libs/usecases';
import { handlersOn } from './handlers';

export interface WorkerOptions {
  readonly config: Pick<Config, 'redisUrl' | 'workerConcurrency' | 'timeZone'> &
    Partial<Pick<Config, 'chunkUnits' | 'mail' | 'key' | 'keyBefore' | 'dataFolder' | 'webhookInHouse'>>;
  readonly store: Store;
  /** The shop's clock; the machine's in the configured time zone when left out. */
  readonly clock?: Clock;
  /** Told of every failure; work goes on. */
  readonly onError?: (error: unknown) => void;
  /** How often what was lost is looked for. */
  readonly sweepEveryMs?: number;
}

const SWEEP_EVERY_MS = 5_000;
/** Looked at each hour, done on the first look of a day. */
const FORGET_EVERY_MS = 3_600_000;
/** Spreadsheets that were brought hold people; they are kept for a day and thrown away within the hour after it. */
const DROP_SHEETS_EVERY_MS = 3_600_000;
const MAIL_EVERY_MS = 2_000;
const EVENT_EVERY_MS = 2_000;
const EVENT_LANES = 4;

/**
 * Starts the worker: through the queue when there is a Redis, inside this process otherwise; and the sweeper beside it.
 * Throws one sentence when the Redis will not do or a job has no handler. Closing waits for the work under way.
 */
export async function startWorker(options: WorkerOptions): Promise<Running> {
  const { config, store, onError = () => undefined, sweepEveryMs = SWEEP_EVERY_MS } = options;
  const clock = options.clock ?? machineClock(config.timeZone);
  const ports = { store, clock };
  const handlers = handlersByJob(handlersOn(ports, config.chunkUnits).map(forEveryLocation));
  const { redisUrl, workerConcurrency } = config;
  if (redisUrl !== undefined) await checkRedis(redisUrl);
  const parts: readonly Running[] = [
    repeat(() => asProgram(() => sweepRechecks(ports)).then(() => false), { everyMs: sweepEveryMs, onError }),
    repeat(() => asProgram(() => forgetDueOwners(ports)).then(() => false), { everyMs: FORGET_EVERY_MS, onError }),
    repeat(() => asProgram(() => dropOldSheets(ports)).then(() => false), { everyMs: DROP_SHEETS_EVERY_MS, onError }),
    repeat(() => asProgram(() => forgetOldEvents(ports)).then(() => false), { everyMs: FORGET_EVERY_MS, onError }),
    ...eventRounds(ports, options),
    mailRounds(ports, options),
    ...(redisUrl === undefined
      ? [startInProcess(store, handlers, { lanes: workerConcurrency, onError })]
      : [
          startRelay(store, redisUrl, onError),
          startQueueWorker(redisUrl, handlers, { concurrency: workerConcurrency, onError }),
        ]),
  ];
  return { close: async () => void (await Promise.all(parts.map((part) => part.close()))) };
}

/** A bulletin knows no location, so what follows from it is worked out for all of them. */
function forEveryLocation(handler: Handler): Handler {
  return { ...handler, run: (payload: never) => asProgram(() => handler.run(payload)) };
}

/** Sends what waits, one mail after the other, through the server in force at that moment; without one it waits on. */
function mailRounds(ports: Ports, { config, onError = () => undefined }: WorkerOptions): Running {
  const source = { store: ports.store, seals: sealsOf(config), environment: config.mail };
  const desk = mailDesk();
  const turn = async () => {
    const mailer = desk(await mailInForce(source));
    return mailer !== null && (await sendNextMail(ports, mailer));
  };
  const rounds = repeat(() => asProgram(turn), { everyMs: MAIL_EVERY_MS, onError });
  return { close: () => rounds.close().then(() => void desk(null)) };
}

/** Keeps the way to one server open, and closes it when it is another or none. */
function mailDesk(): (server: MailServer | null) => Mailer | null {
  let open: { readonly to: string; readonly mailer: ReturnType<typeof openMailer> } | null = null;
  return (server) => {
    const to = JSON.stringify(server);
    if (open?.to === to) return open.mailer;
    open?.mailer.close();
    open = server === null ? null : { to, mailer: openMailer(server) };
    return open?.mailer ?? null;
  };
}

/** Posts events to other programs, several at once, since each may be long in answering. */
function eventRounds(ports: Ports, { config, onError = () => undefined }: WorkerOptions): readonly Running[] {
  const { dataFolder, webhookInHouse: inHouse = [] } = config;
  if (dataFolder === undefined) return [];
  const all = { ...ports, seals: sealsOf(config) };
  const courier = openCourier({ inHouse });
  const turn = () => asProgram(() => deliverNextEvent(all, courier));
  return Array.from({ length: EVENT_LANES }, () => repeat(turn, { everyMs: EVENT_EVERY_MS, onError }));
}

function machineClock(timeZone: string): Clock {
  return { now: () => Date.now(), today: () => dayOfInstant(new Date(), timeZone) };
}
