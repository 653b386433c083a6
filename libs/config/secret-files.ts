import { readFileSync } from 'node:fs';

type Environment = Readonly<Record<string, string | undefined>>;

/** What may stand in a file instead of the environment, where it is seen by whoever may look at the process. */
const WHOLE = ['REVRIGHT_KEY', 'REVRIGHT_KEY_BEFORE', 'OIDC_CLIENT_SECRET'] as const;

/** Addresses whose password may stand in a file of its own, and the variable that names that file. */
const PASSWORDS = {
  DATABASE_PASSWORD_FILE: 'DATABASE_URL',
  MIGRATION_DATABASE_PASSWORD_FILE: 'MIGRATION_DATABASE_URL',
  REDIS_PASSWORD_FILE: 'REDIS_URL',
  SMTP_PASSWORD_FILE: 'SMTP_URL',
} as const;

/** The environment with what the files say in its place, and a sentence for each file that is no use. */
export interface WithSecrets {
  readonly env: Environment;
  readonly problems: readonly string[];
}

/**
 * Reads the files that the environment names: `REVRIGHT_KEY_FILE` and its like hold a variable's value,
 * `DATABASE_PASSWORD_FILE` and its like the password of an address. Blanks and line ends around it do not count. What
 * a file holds is never told.
 */
export function withSecretFiles(env: Environment): WithSecrets {
  const problems: string[] = [];
  const found: Record<string, string> = {};
  const secretOf = (variable: string): string | undefined => {
    const file = env[variable]?.trim();
    if (!file) return undefined;
    const secret = contentOf(file);
    if (secret === null)
      problems.push(`${variable} is '${file}', but must be a file that can be read and is not empty.`);
    return secret ?? undefined;
  };
  for (const name of WHOLE) {
    const secret = secretOf(`${name}_FILE`);
    if (secret === undefined) continue;
    if (env[name]?.trim()) problems.push(`${name} and ${name}_FILE are both set; leave one out.`);
    found[name] = secret;
  }
  for (const [file, name] of Object.entries(PASSWORDS)) {
    const secret = secretOf(file);
    if (secret === undefined) continue;
    const address = withPassword(env[name]?.trim() ?? '', secret);
    if (address === null) problems.push(`${file} is set, but ${name} is no address without a password.`);
    else found[name] = address;
  }
  return { env: { ...env, ...found }, problems };
}

function contentOf(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim() || null;
  } catch {
    return null;
  }
}

function withPassword(address: string, password: string): string | null {
  if (!URL.canParse(address)) return null;
  const url = new URL(address);
  if (url.password !== '') return null;
  url.password = encodeURIComponent(password);
  return url.href;
}
