import { closeDeadRuns, openRun } from './run-folder';

/** Runs once before all spec files. Nothing is started here: see `run-folder.ts`. */
export default async function globalSetup(): Promise<void> {
  await closeDeadRuns();
  openRun();
}
