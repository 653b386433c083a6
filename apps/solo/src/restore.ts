import { resolve } from 'node:path';
import { restoreBackup } from '../../../libs/store';
import { prepareDatabase } from '../../../libs/store/migrate';
import { runCommand } from './with-database';

/**
 * `npm run restore -- file`: puts a backup into an empty database, looks it over, and brings it up to date. Refuses a
 * database that holds anything, and a file that is damaged or newer than the program, before anything is touched.
 */
runCommand(async ({ url, appUrl }) => {
  const name = process.argv[2];
  if (name === undefined) return { ok: false, sentence: 'Say which backup: npm run restore -- file.tar.gz' };
  const file = resolve(process.env['INIT_CWD'] ?? process.cwd(), name);
  const restored = await restoreBackup(url, file);
  if (!restored.ok) return { ok: false, sentence: restored.problem };
  const { manifest } = restored;
  const prepared = await prepareDatabase({ databaseUrl: appUrl ?? url, migrationDatabaseUrl: url });
  if (!prepared.ok) return { ok: false, sentence: prepared.problem };
  const rows = manifest.tables.reduce((sum, table) => sum + table.rows, 0);
  return {
    ok: true,
    sentence:
      `Restored: the shop of ${manifest.takenAt} (${rows} rows in ${manifest.tables.length} tables, all as in the backup; ` +
      `the trail is whole; ${prepared.applied.length} migrations made since).\n` +
      'Everybody signs in anew, and e-mails that were waiting are kept back until a manager has looked at them.',
  };
});
