// Loaded ahead of a program: writes the most memory it ever held, in KB, to the file named by REVRIGHT_PEAK_FILE.
const { writeFileSync } = require('node:fs');

process.on('exit', () => writeFileSync(process.env.REVRIGHT_PEAK_FILE, String(process.resourceUsage().maxRSS)));
