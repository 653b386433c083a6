import { defaultsFor, VARIABLES, type VariableName } from './environment';
import { withSecretFiles } from './secret-files';

/** An OpenID Connect provider with which people can sign in as well. */
export interface OpenIdConfig {
  readonly issuer: string;
  readonly clientId: string;
  readonly clientSecret: string;
  readonly name: string;
  /** As what somebody unknown is added; undefined when nobody is. */
  readonly newPeople: 'technician' | 'counter' | undefined;
}

/** What the programs know about where they run. Field names are plain words; units are in the variable's meaning. */
export interface Config {
  readonly databaseUrl: string | undefined;
  /** Of the owner of the tables, where that is another login than the programs'. */
  readonly migrationDatabaseUrl: string | undefined;
  readonly redisUrl: string | undefined;
  /** Absolute path. */
  readonly dataFolder: string;
  readonly port: number;
  readonly host: string;
  readonly mode: 'development' | 'production' | 'test';
  readonly demo: boolean;
  readonly workerConcurrency: number;
  readonly chunkUnits: number;
  readonly oldestWorkSeconds: number;
  readonly timeZone: string;
  /** Absolute path. */
  readonly auditHeadFile: string | undefined;
  /** 64 hexadecimal digits. */
  readonly key: string | undefined;
  /** The key before that, while what it sealed is sealed anew. */
  readonly keyBefore: string | undefined;
  readonly elsewhere: OpenIdConfig | undefined;
  /** Without a slash at its end. */
  readonly publicUrl: string | undefined;
  /** Where e-mails are handed over, and from whom they come; undefined where none are sent. */
  readonly mail: { readonly url: string; readonly from: string } | undefined;
  readonly trustedProxies: readonly string[];
  /** Hosts inside the house that webhooks may go to, in small letters. */
  readonly webhookInHouse: readonly string[];
  readonly logLevel: 'fatal' | 'error' | 'warn' | 'info' | 'debug' | 'trace' | 'silent';
}

export type ConfigResult =
  { readonly ok: true; readonly config: Config } | { readonly ok: false; readonly problems: readonly string[] };

type Environment = Readonly<Record<string, string | undefined>>;
type Parsed = { [Name in VariableName]: ReturnType<(typeof VARIABLES)[Name]['schema']['parse']> };

/** A password inside an address must not end up in a log or on a screen. */
const withoutPassword = (text: string): string => text.replace(/(:\/\/[^:/@]*:)[^@]*@/, '$1***@');

/**
 * Reads the environment once. Either a whole configuration or one sentence for each variable that is wrong,
 * naming the variable, its value (a password hidden) and what would be accepted.
 */
export function readConfig(environment: Environment): ConfigResult {
  const { env, problems: unread } = withSecretFiles(environment);
  const defaults = defaultsFor(env['NODE_ENV'] === 'production');
  const problems: string[] = [...unread];
  const parsed: Partial<Record<VariableName, unknown>> = {};
  for (const name of Object.keys(VARIABLES) as VariableName[]) {
    const text = env[name]?.trim() || defaults[name];
    const result = VARIABLES[name].schema.safeParse(text);
    if (result.success) parsed[name] = result.data;
    else problems.push(sentence(name, shown(name, text ?? ''), result.error.issues[0]!.message));
  }
  if (parsed.NODE_ENV === 'production' && parsed.REVRIGHT_DEMO === true)
    problems.push(
      sentence('REVRIGHT_DEMO', env['REVRIGHT_DEMO'] ?? '', 'false or not set where NODE_ENV is production'),
    );
  if (parsed.OIDC_ISSUER !== undefined)
    for (const name of ['OIDC_CLIENT_ID', 'OIDC_CLIENT_SECRET'] as const)
      if (parsed[name] === undefined) problems.push(`${name} is not set, but must be where OIDC_ISSUER is.`);
  if (parsed.MIGRATION_DATABASE_URL !== undefined && parsed.DATABASE_URL === undefined)
    problems.push(
      sentence('MIGRATION_DATABASE_URL', env['MIGRATION_DATABASE_URL'] ?? '', 'left out where DATABASE_URL is not set'),
    );
  if ((parsed.SMTP_URL === undefined) !== (parsed.MAIL_FROM === undefined))
    problems.push('SMTP_URL and MAIL_FROM must be set both, or neither.');
  return problems.length > 0 ? { ok: false, problems } : { ok: true, config: toConfig(parsed as Parsed) };
}

/** What is secret is not told, not even when it is wrong. */
const SECRET: readonly VariableName[] = ['REVRIGHT_KEY', 'REVRIGHT_KEY_BEFORE', 'OIDC_CLIENT_SECRET'];
const shown = (name: VariableName, text: string): string => (SECRET.includes(name) ? '***' : text);

const sentence = (name: VariableName, text: string, accepted: string): string =>
  `${name} is '${withoutPassword(text)}', but must be ${accepted}.`;

const toConfig = (parsed: Parsed): Config => ({
  databaseUrl: parsed.DATABASE_URL,
  migrationDatabaseUrl: parsed.MIGRATION_DATABASE_URL,
  redisUrl: parsed.REDIS_URL,
  dataFolder: parsed.REVRIGHT_DATA,
  port: parsed.PORT,
  host: parsed.HOST,
  mode: parsed.NODE_ENV,
  demo: parsed.REVRIGHT_DEMO,
  workerConcurrency: parsed.WORKER_CONCURRENCY,
  chunkUnits: parsed.CHUNK_UNITS,
  oldestWorkSeconds: parsed.OLDEST_WORK_SECONDS,
  timeZone: parsed.TIME_ZONE,
  auditHeadFile: parsed.AUDIT_HEAD_FILE,
  key: parsed.REVRIGHT_KEY,
  keyBefore: parsed.REVRIGHT_KEY_BEFORE,
  elsewhere: openIdOf(parsed),
  publicUrl: parsed.PUBLIC_URL?.replace(/\/+$/, ''),
  webhookInHouse: parsed.WEBHOOK_IN_HOUSE.toLowerCase().split(/, */).filter(Boolean),
  trustedProxies: parsed.TRUSTED_PROXIES.split(/, */),
  mail: mailOf(parsed),
  logLevel: parsed.LOG_LEVEL,
});

function mailOf({ SMTP_URL: url, MAIL_FROM: from }: Parsed): Config['mail'] {
  return url === undefined || from === undefined ? undefined : { url, from };
}

function openIdOf(parsed: Parsed): OpenIdConfig | undefined {
  const { OIDC_ISSUER: issuer, OIDC_CLIENT_ID: clientId, OIDC_CLIENT_SECRET: clientSecret } = parsed;
  if (issuer === undefined || clientId === undefined || clientSecret === undefined) return undefined;
  return { issuer, clientId, clientSecret, name: parsed.OIDC_NAME, newPeople: parsed.OIDC_NEW_PEOPLE };
}
