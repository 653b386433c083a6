import { spawnSync } from 'node:child_process';
import { onPath } from './on-path';
import { say } from './say';

const INSTALLED_WITHIN_MS = 280_000;

/**
 * Installs a Debian package, saying so. Only as root on a system with apt-get; elsewhere, and when it fails, the
 * answer is the reason why not.
 */
export function installDebianPackage(name: string): string | undefined {
  const apt = onPath('apt-get');
  if (!apt) return 'this system has no apt-get to install it with';
  if (process.getuid?.() !== 0) return 'only root may install it';
  say(`Installing the Debian package '${name}' (apt-get install), because the tests need it.`);
  for (const step of [['update'], ['install', '--yes', '--no-install-recommends', name]]) {
    const run = spawnSync(apt, ['-qq', ...step], {
      encoding: 'utf8',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      stdio: ['ignore', 'ignore', 'pipe'],
      timeout: INSTALLED_WITHIN_MS,
    });
    if (run.status !== 0) return `apt-get ${step[0]} failed: ${run.stderr.trim().split('\n').at(-1) ?? 'no answer'}`;
  }
  return undefined;
}
