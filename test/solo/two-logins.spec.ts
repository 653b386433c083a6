import { spawnSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { repoRoot } from '../../libs/config';
import { folderInRun } from '../../libs/testing';
import { askDatabase } from './own-database';
import { startProgram, type Program } from './program';

jest.setTimeout(120_000);

const folder = folderInRun('data');
let program: Program;

beforeAll(async () => {
  program = startProgram(folder, { REVRIGHT_DEMO: 'true' });
  await program.address;
});
afterAll(async () => {
  program.child.kill('SIGTERM');
  await program.ended;
});

const verify = (...words: string[]) =>
  spawnSync(process.execPath, [join(repoRoot(), 'dist', 'apps', 'solo', 'src', 'verify-trail.js'), ...words], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], REVRIGHT_DATA: folder },
  });

describe('the program on its own database', () => {
  it('works as a login that owns nothing, with a password of its own', async () => {
    const rows = await askDatabase<{ login: string; powers: boolean }>(
      folder,
      `SELECT DISTINCT a.usename AS login, r.rolsuper OR r.rolbypassrls AS powers
       FROM pg_stat_activity a JOIN pg_roles r ON r.rolname = a.usename WHERE a.application_name LIKE 'revright%'`,
    );
    expect(rows).toEqual([{ login: 'revright_app', powers: false }]);
    const [owner, app] = ['database-password', 'database-app-password'].map((name) => join(folder, name));
    expect(readFileSync(app!, 'utf8')).not.toBe(readFileSync(owner!, 'utf8'));
    expect(statSync(app!).mode & 0o777).toBe(0o600);
  });

  it('has its trail looked over while it runs and once it has stopped, by the head that was written down too', async () => {
    const running = verify();
    expect(running.stdout).toMatch(/^The trail is whole: \d+ rows, head [0-9a-f]{64}\.\n$/);
    const head = /head ([0-9a-f]{64})/.exec(running.stdout)![1]!;
    expect((await fetch(`${await program.address}/api/health`)).status).toBe(200);
    program.child.kill('SIGTERM');
    const { errors } = await program.ended;
    expect(errors).toMatch(/The trail of changes ends at row \d+ with [0-9a-f]{64}\./);
    expect(verify(head)).toMatchObject({ status: 0, stderr: '' });
    expect(verify('0'.repeat(64))).toMatchObject({ status: 1 });
  });
});
