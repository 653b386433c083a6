import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, readFileSync, renameSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { makeOwnFolder } from './reachable-place';
import { program, type ServerFiles } from './server-files';
import { ids, type ServerUser } from './server-user';

/** The name of the owner of our own database server. */
export const OWNER = 'revright';

/**
 * Sorting goes by code point with the server's own tables (builtin C.UTF-8), so that order does not depend on the
 * machine's locale; only password sign-in is allowed.
 */
const SETTINGS = [
  `--username=${OWNER}`,
  '--encoding=UTF8',
  '--locale=C',
  '--locale-provider=builtin',
  '--builtin-locale=C.UTF-8',
  '--auth=scram-sha-256',
];

/** The version a database folder was made by ('18'), or undefined when there is none in it. */
export function clusterVersion(folder: string): string | undefined {
  const file = join(folder, 'PG_VERSION');
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : undefined;
}

export interface ClusterPlan {
  readonly files: ServerFiles;
  /** An empty folder. */
  readonly folder: string;
  readonly user: ServerUser;
  readonly password: string;
  /** False only for databases that are thrown away: skips waiting for the disk. */
  readonly durable: boolean;
}

/**
 * Makes an empty database server in the folder. It is made beside it and moved there when whole, so that a start
 * broken off by a power cut leaves nothing that looks like a database. Throws with the program's own words.
 */
export async function makeCluster(plan: ClusterPlan): Promise<void> {
  const beside = `${plan.folder}.new`;
  const passwordFile = `${plan.folder}.first-password`;
  rmSync(beside, { recursive: true, force: true });
  makeOwnFolder(beside, plan.user);
  writeFileSync(passwordFile, plan.password, { mode: 0o600 });
  if (plan.user.uid !== undefined) chownSync(passwordFile, plan.user.uid, plan.user.gid!);
  try {
    await runInitdb(plan, [`--pgdata=${beside}`, `--pwfile=${passwordFile}`]);
  } finally {
    rmSync(passwordFile, { force: true });
  }
  rmdirSync(plan.folder);
  renameSync(beside, plan.folder);
}

/** Runs it in a process group of its own: Ctrl-C in a terminal would otherwise break it off half way. */
async function runInitdb(plan: ClusterPlan, where: readonly string[]): Promise<void> {
  const settings = plan.durable ? SETTINGS : [...SETTINGS, '--no-sync'];
  const child = spawn(program(plan.files, 'initdb'), [...where, ...settings], {
    cwd: '/',
    detached: true,
    env: { PATH: process.env['PATH'], LC_ALL: 'C' },
    stdio: ['ignore', 'ignore', 'pipe'],
    ...ids(plan.user),
  });
  const [words, [code]] = await Promise.all([text(child.stderr), once(child, 'exit') as Promise<[number | null]>]);
  if (code !== 0) throw new Error(`initdb failed: ${words.trim()}`);
}
