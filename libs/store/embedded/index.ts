/**
 * A door of its own beside the store's: starting a database server needs none of the queries, and a test run must be
 * able to start one while they are being changed.
 */
export { embeddedProblemSentence, type EmbeddedProblem } from './embedded-problem';
export { lockFolder, type LockResult } from './folder-lock';
export { freePort } from './postgres-process';
export { birthOf, isGoneWithin, isRunning, stopProcess } from './running-process';
export { runningServer } from './running-server';
export { startEmbedded, type EmbeddedOptions, type EmbeddedResult, type EmbeddedServer } from './start-embedded';
