import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { repoRoot } from '../../../libs/config';
import { workerArguments } from '../../recheck/worker-arguments';

/** A worker process of its own, as it runs in a shop. */
export class WorkerProcess {
  private constructor(private readonly child: ChildProcess) {}

  static async start(databaseUrl: string, redisUrl: string, concurrency: number): Promise<WorkerProcess> {
    const more = { WORKER_CONCURRENCY: String(concurrency), TIME_ZONE: 'UTC', LOG_LEVEL: 'info' };
    const env = { ...process.env, DATABASE_URL: databaseUrl, REDIS_URL: redisUrl, ...more };
    const child = spawn(process.execPath, workerArguments(), {
      cwd: repoRoot(),
      env,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await once(child.stdout, 'data');
    child.stdout.resume();
    return new WorkerProcess(child);
  }

  /** The most memory it has held so far, in megabytes, as the system counts it. */
  peakMb(): number {
    const status = readFileSync(`/proc/${this.child.pid}/status`, 'utf8');
    return Math.round(Number(/VmHWM:\s+(\d+) kB/.exec(status)![1]) / 1_024);
  }

  async stop(): Promise<void> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return;
    this.child.kill('SIGTERM');
    await once(this.child, 'exit');
  }
}
