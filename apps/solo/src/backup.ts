import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { makeBackup } from '../../../libs/store';
import { runCommand } from './with-database';

/**
 * `npm run backup [-- file]`: copies the whole shop, photos included, into one file while it goes on working; without a
 * name into the folder `backups` of REVRIGHT_DATA.
 */
runCommand(async ({ url }, { dataFolder }) => {
  const file = resolve(startedIn(), process.argv[2] ?? join(dataFolder, 'backups', nameFor(new Date())));
  if (existsSync(file)) return { ok: false, sentence: `${file} is there already; name another file.` };
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  const made = await makeBackup(url, file);
  if (!made.ok) return { ok: false, sentence: made.problem };
  const { tables, rulebookRevision, trail } = made.manifest;
  const rows = tables.reduce((sum, table) => sum + table.rows, 0);
  const megabytes = (statSync(file).size / 1_000_000).toFixed(1);
  return {
    ok: true,
    sentence:
      `Written and read again: ${file} (${megabytes} MB, ${tables.length} tables, ${rows} rows, rulebook revision ` +
      `${rulebookRevision ?? 'none'}, head of the trail ${trail.head ?? 'none'}).\n` +
      'The key that seals second factors and what webhooks are signed with is not in it (the file key in REVRIGHT_DATA, or ' +
      'REVRIGHT_KEY): keep that elsewhere.',
  };
});

/** npm runs scripts in the project's folder; a file is named from where the person stands. */
function startedIn(): string {
  return process.env['INIT_CWD'] ?? process.cwd();
}

const nameFor = (at: Date): string => `revright-${at.toISOString().slice(0, 19).replaceAll(':', '')}Z.tar.gz`;
