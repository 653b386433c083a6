import { databasePassword, placeOfDatabase } from './database-folder';
import { isRunning } from './running-process';
import { addressOf, isServerOf, serverNote } from './server-note';

/**
 * The address of the server that another program runs on that data folder, as its owner signs in; undefined when none
 * runs. A note that a killed server left behind names a process that may be anybody's by now, and is not believed.
 */
export function runningServer(dataFolder: string): string | undefined {
  const folder = placeOfDatabase(dataFolder);
  const password = databasePassword(dataFolder);
  const note = serverNote(folder);
  if (password === undefined || note?.port === undefined) return undefined;
  return isRunning(note.pid) && isServerOf(folder, note) ? addressOf(password, note.port) : undefined;
}
