import { closeRun, runFolder } from './run-folder';
import { stopTestServer } from './test-server';

/** Runs once after all spec files, also when some failed. */
export default async function globalTeardown(): Promise<void> {
  await stopTestServer();
  await closeRun(runFolder());
}
