import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderInRun } from '../../testing';
import { lockFolder } from './folder-lock';
import { birthOf } from './running-process';

const LOCK = 'in-use-by';

/** The id of a process that has just ended. */
async function deadProcess(): Promise<number> {
  const child = spawn(process.execPath, ['-e', '']);
  await once(child, 'exit');
  return child.pid!;
}

describe('the lock of a data folder', () => {
  it('is refused while its holder runs, naming it, and free again after release', async () => {
    const folder = folderInRun('lock');
    const first = await lockFolder(folder);
    expect(await lockFolder(folder)).toEqual({ ok: false, pid: process.pid });
    if (first.ok) first.release();
    expect(readdirSync(folder)).toEqual([]);
    expect(await lockFolder(folder)).toMatchObject({ ok: true });
  });

  it('is taken over from a holder that is dead', async () => {
    const folder = folderInRun('lock');
    writeFileSync(join(folder, LOCK), `${await deadProcess()} 12345`);
    expect(await lockFolder(folder)).toMatchObject({ ok: true });
  });

  it('is taken over when the process id of the dead holder now belongs to another process', async () => {
    const folder = folderInRun('lock');
    writeFileSync(join(folder, LOCK), `${process.pid} ${birthOf(process.pid)}0`);
    expect(await lockFolder(folder)).toMatchObject({ ok: true });
  });

  it('is taken over when it is empty since a power cut', async () => {
    const folder = folderInRun('lock');
    writeFileSync(join(folder, LOCK), '');
    utimesSync(join(folder, LOCK), new Date(0), new Date(0));
    expect(await lockFolder(folder)).toMatchObject({ ok: true });
  });

  it('goes to exactly one of many that want a dead holder’s at the same moment', async () => {
    const folder = folderInRun('lock');
    writeFileSync(join(folder, LOCK), `${await deadProcess()} 12345`);
    const results = await Promise.all(Array.from({ length: 20 }, () => lockFolder(folder)));
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('throws what the file system says where nothing can be written', async () => {
    const file = join(folderInRun('lock'), 'file');
    writeFileSync(file, '');
    await expect(lockFolder(file)).rejects.toMatchObject({ code: 'ENOTDIR' });
    expect(existsSync(file)).toBe(true);
  });
});
