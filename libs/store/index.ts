export { embeddedProblemSentence, type EmbeddedProblem } from './embedded/embedded-problem';
export { lockFolder, type LockResult } from './embedded/folder-lock';
export { freePort } from './embedded/postgres-process';
export { birthOf, isRunning, stopProcess } from './embedded/running-process';
export { startEmbedded, type EmbeddedResult, type EmbeddedServer } from './embedded/start-embedded';
export { applyMigrations } from './migrate/apply-migrations';
export { schemaDiff } from './migrate/schema-diff';
export { withDatabaseName } from './migrate/schema-engine-adapter';
