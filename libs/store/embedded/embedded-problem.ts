/** Why the own PostgreSQL cannot be started. Each is expected in daily life; anything else is thrown. */
export type EmbeddedProblem =
  | { readonly code: 'folder-not-writable'; readonly folder: string; readonly reason: string }
  | { readonly code: 'folder-in-use'; readonly folder: string; readonly pid: number }
  | { readonly code: 'no-server-files'; readonly platform: string }
  | { readonly code: 'no-unprivileged-user' }
  | { readonly code: 'other-version'; readonly folder: string; readonly found: string; readonly expected: string }
  | { readonly code: 'password-missing'; readonly folder: string }
  | { readonly code: 'did-not-start'; readonly logFile: string; readonly lastLine: string };

/** The problem in one sentence that says what to do about it. */
export function embeddedProblemSentence(problem: EmbeddedProblem): string {
  switch (problem.code) {
    case 'folder-not-writable':
      return `The data folder '${problem.folder}' cannot be written to (${problem.reason}); set REVRIGHT_DATA to a folder that can.`;
    case 'folder-in-use':
      return `The data folder '${problem.folder}' is in use by another running copy (process ${problem.pid}); stop that one, or set REVRIGHT_DATA to another folder.`;
    case 'no-server-files':
      return `No PostgreSQL files are installed for ${problem.platform}; run 'npm ci' again, or set DATABASE_URL to a PostgreSQL that runs.`;
    case 'no-unprivileged-user':
      return `PostgreSQL refuses to run as root and no other user could be found or made; start as an ordinary user, or set DATABASE_URL.`;
    case 'other-version':
      return `The database in '${problem.folder}' was made by PostgreSQL ${problem.found}, but PostgreSQL ${problem.expected} is installed; use the earlier release to move the data, or set REVRIGHT_DATA to another folder.`;
    case 'password-missing':
      return `The data folder '${problem.folder}' holds a database but its file 'database-password' is missing; restore that file, or set REVRIGHT_DATA to another folder.`;
    case 'did-not-start':
      return `PostgreSQL did not start (${problem.lastLine}); its log is '${problem.logFile}'.`;
  }
}
