export { chromiumPath } from './chromium';
export { pdftoppmPath } from './pdftoppm';
export { startRedis, withRedis, type RedisServer } from './redis';
export { closeDeadRuns, closeRun, folderInRun, noteProcess, openRun, runFolder } from './run-folder';
export { say } from './say';
export { stopTestServer } from './test-server';
export { openDatabase, withDatabase, type OpenDatabase, type SpecDatabase } from './with-database';
