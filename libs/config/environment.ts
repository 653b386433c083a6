import { availableParallelism } from 'node:os';
import { isAbsolute, resolve } from 'node:path';
import { z } from 'zod';

const YES = ['1', 'true', 'yes', 'on'];
const NO = ['0', 'false', 'no', 'off'];
const LOG_LEVELS = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const;

const url = (protocols: readonly string[]) =>
  z.string().refine((text) => URL.canParse(text) && protocols.includes(new URL(text).protocol), {
    error: `an address that starts with ${protocols.map((name) => `${name}//`).join(' or ')}`,
  });

/** Plain http only to this very machine, where nobody listens in. */
const isIssuer = (text: string): boolean => {
  if (!URL.canParse(text)) return false;
  const { protocol, hostname } = new URL(text);
  return protocol === 'https:' || (protocol === 'http:' && ['127.0.0.1', '[::1]', 'localhost'].includes(hostname));
};

const wholeNumber = (low: number, high: number) =>
  z
    .string()
    .refine((text) => /^\d{1,9}$/.test(text) && Number(text) >= low && Number(text) <= high, {
      error: `a whole number from ${low} to ${high}`,
    })
    .transform(Number);

const yesOrNo = z
  .string()
  .refine((text) => [...YES, ...NO].includes(text.toLowerCase()), { error: 'true or false' })
  .transform((text) => YES.includes(text.toLowerCase()));

const isTimeZone = (name: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
};

/**
 * Every variable of the environment that the programs read. An empty value counts as not set.
 * The default text is what the README's table shows; `read-config.ts` fills defaults that depend on the machine.
 */
export const VARIABLES = {
  DATABASE_URL: {
    schema: url(['postgresql:', 'postgres:']).optional(),
    fallback: 'not set: an own PostgreSQL is started',
    meaning: 'Address of a PostgreSQL (14 or newer) to use instead of the one that is started by the program.',
  },
  MIGRATION_DATABASE_URL: {
    schema: url(['postgresql:', 'postgres:']).optional(),
    fallback: 'not set: DATABASE_URL does both',
    meaning:
      'Address of the same database as the owner of its tables; DATABASE_URL then names the programs as `revright_app`, who own nothing.',
  },
  REDIS_URL: {
    schema: url(['redis:', 'rediss:']).optional(),
    fallback: 'not set: rechecks run inside the process',
    meaning: 'Address of a Redis (maxmemory-policy noeviction) through which rechecks reach the worker processes.',
  },
  REVRIGHT_DATA: {
    schema: z.string().transform((folder) => (isAbsolute(folder) ? folder : resolve(folder))),
    fallback: './data',
    meaning: 'Folder that keeps the database (unless DATABASE_URL is set) and everything else between starts.',
  },
  PORT: {
    schema: wholeNumber(0, 65_535),
    fallback: '4780',
    meaning: 'Port of the web page and API; 0 picks a free one.',
  },
  HOST: {
    schema: z.string().regex(/^[A-Za-z0-9.:_-]+$/, { error: 'a host name or an IP address' }),
    fallback: '127.0.0.1',
    meaning: 'Address to listen on; 0.0.0.0 lets other machines of the shop reach it.',
  },
  NODE_ENV: {
    schema: z.enum(['development', 'production', 'test'], { error: 'development, production or test' }),
    fallback: 'development',
    meaning: 'production switches off the demo shop and its published passwords.',
  },
  REVRIGHT_DEMO: {
    schema: yesOrNo,
    fallback: 'true, in production false',
    meaning: 'Whether an empty database is filled with the demo shop.',
  },
  WORKER_CONCURRENCY: {
    schema: wholeNumber(1, 64),
    fallback: 'the number of processors, at most 2',
    meaning: 'How many chunks of a recheck one process judges at the same time.',
  },
  CHUNK_UNITS: {
    schema: wholeNumber(1, 100_000),
    fallback: '10000',
    meaning: 'Most units that one chunk of a recheck reads; a chunk with much to write is cut into smaller ones.',
  },
  OLDEST_WORK_SECONDS: {
    schema: wholeNumber(10, 86_400),
    fallback: '900',
    meaning: 'How long work may wait, in seconds, before the programs say that they are not ready.',
  },
  TIME_ZONE: {
    schema: z.string().refine(isTimeZone, { error: 'a time zone name such as Europe/Paris' }),
    fallback: 'that of the machine',
    meaning: "Time zone of the shop: it decides which day is 'today'.",
  },
  SMTP_URL: {
    schema: url(['smtp:', 'smtps:']).optional(),
    fallback: 'not set: the one settled on the page',
    meaning:
      'Address of the mail server that takes e-mails to owners, with its name and password; goes before the one settled on the page.',
  },
  MAIL_FROM: {
    schema: z
      .string()
      .regex(/^(?:[^<>"\r\n]{1,100} )?<?[^\s@<>,;:"]{1,64}@[A-Za-z0-9.-]{1,190}>?$/, {
        error: "an address such as shop@example.org or 'The shop <shop@example.org>'",
      })
      .optional(),
    fallback: 'not set',
    meaning: 'From whom e-mails to owners come; needed where SMTP_URL is set.',
  },
  WEBHOOK_IN_HOUSE: {
    schema: z.string().regex(/^$|^[0-9A-Za-z.:_-]+(, *[0-9A-Za-z.:_-]+)*$/, {
      error: 'host names or addresses, separated by commas',
    }),
    fallback: 'none',
    meaning: 'Hosts inside the house that webhooks may go to, by http too; all others must be public and take https.',
  },
  AUDIT_HEAD_FILE: {
    schema: z
      .string()
      .transform((file) => (isAbsolute(file) ? file : resolve(file)))
      .optional(),
    fallback: 'not set: it stands in the log alone',
    meaning: 'File, best on another machine, to which the head of the trail of changes is added once a day.',
  },
  REVRIGHT_KEY: {
    schema: z
      .string()
      .regex(/^[0-9a-f]{64}$/i, { error: '64 hexadecimal digits, as `openssl rand -hex 32` prints them' })
      .optional(),
    fallback: 'not set: a file `key` in REVRIGHT_DATA, made when first needed',
    meaning:
      'Key that seals what must be read again and yet not lie open in the database; the same for every API and worker.',
  },
  REVRIGHT_KEY_BEFORE: {
    schema: z
      .string()
      .regex(/^[0-9a-f]{64}$/i, { error: '64 hexadecimal digits: the key as it was before' })
      .optional(),
    fallback: 'not set',
    meaning: 'The key before REVRIGHT_KEY was changed, for one start: what it sealed is then sealed with the new one.',
  },
  OIDC_ISSUER: {
    schema: z.string().refine(isIssuer, { error: 'an address that starts with https://' }).optional(),
    fallback: 'not set: people sign in here alone',
    meaning: 'Issuer of an OpenID Connect provider with which people can sign in as well.',
  },
  OIDC_CLIENT_ID: {
    schema: z.string().max(300).optional(),
    fallback: 'not set',
    meaning: 'What the provider calls this shop.',
  },
  OIDC_CLIENT_SECRET: {
    schema: z.string().max(1_000).optional(),
    fallback: 'not set',
    meaning: 'What this shop proves itself with to the provider.',
  },
  OIDC_NAME: {
    schema: z.string().max(40, { error: 'at most 40 characters' }),
    fallback: 'company account',
    meaning: 'What the button on the sign-in page calls it.',
  },
  OIDC_NEW_PEOPLE: {
    schema: z.enum(['technician', 'counter'], { error: 'technician or counter' }).optional(),
    fallback: 'not set: nobody is added unasked',
    meaning: 'Role as which somebody unknown with a verified e-mail address is added at the first sign-in with it.',
  },
  PUBLIC_URL: {
    schema: url(['https:', 'http:']).optional(),
    fallback: 'not set: as the browser asks for it',
    meaning: 'Address under which people reach the page, where a provider is to send them back to.',
  },
  TRUSTED_PROXIES: {
    schema: z
      .string()
      .regex(/^[0-9A-Za-z.:/]+(, *[0-9A-Za-z.:/]+)*$/, { error: 'addresses or ranges, separated by commas' }),
    fallback: 'loopback',
    meaning: 'Proxies whose word is taken for where a request came from and whether by https: addresses or ranges.',
  },
  LOG_LEVEL: {
    schema: z.enum(LOG_LEVELS, { error: LOG_LEVELS.join(', ') }),
    fallback: 'info',
    meaning: `How much is logged: ${LOG_LEVELS.join(', ')}.`,
  },
} as const;

export type VariableName = keyof typeof VARIABLES;

/** The text each variable has when it is not set; undefined where being unset means something of its own. */
export function defaultsFor(production: boolean): Partial<Record<VariableName, string>> {
  return {
    REVRIGHT_DATA: './data',
    PORT: '4780',
    HOST: '127.0.0.1',
    NODE_ENV: 'development',
    REVRIGHT_DEMO: production ? 'false' : 'true',
    WORKER_CONCURRENCY: String(Math.min(2, availableParallelism())),
    CHUNK_UNITS: '10000',
    OLDEST_WORK_SECONDS: '900',
    TIME_ZONE: Intl.DateTimeFormat().resolvedOptions().timeZone,
    OIDC_NAME: 'company account',
    TRUSTED_PROXIES: 'loopback',
    WEBHOOK_IN_HOUSE: '',
    LOG_LEVEL: 'info',
  };
}
