/** A door of its own beside the store's, as the one of `embedded`: migrating needs none of the queries. */
export { applyMigrations } from './apply-migrations';
export { checkServer, serverProblemSentence, type ServerProblem } from './check-server';
export { letAppIn, userOf } from './app-login';
export { migrationNames, prismaFolder } from './migration-list';
export { prepareDatabase, type DatabaseAddresses, type Prepared } from './prepare-database';
export { schemaDiff } from './schema-diff';
export { withDatabaseName } from './schema-engine-adapter';
