import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** The user PostgreSQL runs as. `undefined` ids mean: the user who runs this program. */
export interface ServerUser {
  readonly name: string;
  readonly uid?: number;
  readonly gid?: number;
}

const OWN_NAME = 'revright';

/**
 * PostgreSQL refuses to run as root. For root an unprivileged user is picked: our own, else 'postgres', else a
 * new one, else 'nobody'. Returns undefined when there is none at all.
 */
export function serverUser(): ServerUser | undefined {
  if (process.getuid?.() !== 0) return { name: 'the current user' };
  const known = lookUp(OWN_NAME) ?? lookUp('postgres');
  if (known) return known;
  spawnSync('useradd', ['--system', '--no-create-home', '--shell', '/usr/sbin/nologin', OWN_NAME], { stdio: 'ignore' });
  return lookUp(OWN_NAME) ?? lookUp('nobody');
}

/** Reads /etc/passwd, because Node has no look-up by name. */
function lookUp(name: string): ServerUser | undefined {
  const line = readPasswd()
    .split('\n')
    .find((entry) => entry.startsWith(`${name}:`));
  const [, , uid, gid] = line?.split(':') ?? [];
  return uid && gid ? { name, uid: Number(uid), gid: Number(gid) } : undefined;
}

const readPasswd = (): string => {
  try {
    return readFileSync('/etc/passwd', 'utf8');
  } catch {
    return '';
  }
};

/** Whether that user can run the program, asked of the system itself rather than guessed from mode bits. */
export const canRun = (user: ServerUser, file: string): boolean => test(user, '-x', file);

/** Whether that user can enter the folder. */
export const canEnter = (user: ServerUser, folder: string): boolean => test(user, '-x', folder);

/** Whether that user can reach the folder and write into it. */
export const canWrite = (user: ServerUser, folder: string): boolean => test(user, '-w', folder);

function test(user: ServerUser, question: '-w' | '-x', path: string): boolean {
  if (user.uid === undefined) return true;
  const asked = spawnSync('/bin/sh', ['-c', `[ ${question} "$1" ]`, 'sh', path], {
    cwd: '/',
    stdio: 'ignore',
    ...ids(user),
  });
  return asked.status === 0;
}

/** The user's ids as options of spawn. */
export const ids = (user: ServerUser): { uid?: number; gid?: number } =>
  user.uid === undefined ? {} : { uid: user.uid, gid: user.gid! };
