/** A door of its own beside the store's, as the one of `embedded`: migrating needs none of the queries. */
export { applyMigrations } from './apply-migrations';
export { letAppIn } from './app-login';
export { migrationNames, prismaFolder } from './migration-list';
export { prepareDatabase, type DatabaseAddresses, type Prepared } from './prepare-database';
export { withDatabaseName } from './schema-engine-adapter';
