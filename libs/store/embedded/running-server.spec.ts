import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeDatabasePassword, placeOfDatabase } from './database-folder';
import { runningServer } from './running-server';

describe('the server that is said to run on a data folder', () => {
  it('is not believed when the noted id belongs to another program by now', () => {
    const data = mkdtempSync(join(tmpdir(), 'revright-note-'));
    const other = spawn('sleep', ['60'], { stdio: 'ignore' });
    try {
      expect(runningServer(data)).toBeUndefined();
      const folder = placeOfDatabase(data);
      mkdirSync(folder, { recursive: true });
      makeDatabasePassword(data);
      writeFileSync(join(folder, 'postmaster.pid'), `${other.pid}\n${folder}\n1\n54321\n\n127.0.0.1\n1 2\nready\n`);
      expect(runningServer(data)).toBeUndefined();
    } finally {
      other.kill();
      rmSync(data, { recursive: true, force: true });
    }
  });
});
