export { makeBackup, type BackupResult } from './make-backup';
export { restoreBackup, type RestoreResult } from './restore-backup';
