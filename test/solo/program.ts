import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { repoRoot } from '../../libs/config';

export const ENTRY = join(repoRoot(), 'dist', 'apps', 'solo', 'src', 'main.js');

/** The program as a process of its own, started the way `npm start` does. */
export interface Program {
  readonly child: ChildProcess;
  /** Resolves with the address it prints, rejects when it ends before. */
  readonly address: Promise<string>;
  /** Resolves when it has ended: its exit code (null after a kill) and what it wrote. */
  readonly ended: Promise<{ readonly code: number | null; readonly output: string; readonly errors: string }>;
}

/** Starts it on that data folder and a free port; further variables may be given, and a shell put in between as npm does. */
export function startProgram(dataFolder: string, env: Record<string, string> = {}, throughShell = false): Program {
  const command = [process.execPath, '--enable-source-maps', ENTRY];
  const shell = ['sh', '-c', `true && ${command.map((word) => `'${word}'`).join(' ')}; exit $?`];
  const [program, ...words] = throughShell ? shell : command;
  const child = spawn(program!, words, {
    env: { PATH: process.env['PATH'], PORT: '0', REVRIGHT_DEMO: 'false', REVRIGHT_DATA: dataFolder, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = Promise.all([once(child, 'exit'), text(child.stdout), text(child.stderr)]).then(
    ([[code], output, errors]) => ({ code: code as number | null, output, errors }),
  );
  const address = new Promise<string>((found, failed) => {
    let seen = '';
    child.stdout.on('data', (chunk) => {
      seen += String(chunk);
      const [match] = /http:\/\/[\w.:[\]-]+:\d+/.exec(seen) ?? [];
      if (match) found(match);
    });
    void ended.then(({ output, errors }) => failed(new Error(`it ended: ${output}${errors}`)));
  });
  // Not every test waits for the address.
  address.catch(() => undefined);
  return { child, address, ended };
}
