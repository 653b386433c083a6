// Loaded ahead of a program: writes the most memory it ever held, in KB, to the file named by REVRIGHT_PEAK_FILE.
const { existsSync, readFileSync, writeFileSync } = require('node:fs');

// On Linux what the system counts for a process begins with what its parent held when it was started.
const STATUS = '/proc/self/status';

function peak() {
  const own = existsSync(STATUS) ? /VmHWM:\s+(\d+) kB/.exec(readFileSync(STATUS, 'utf8'))?.[1] : undefined;
  return own ?? String(process.resourceUsage().maxRSS);
}

process.on('exit', () => writeFileSync(process.env.REVRIGHT_PEAK_FILE, peak()));
