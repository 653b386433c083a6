import { closeDeadRuns, closeRun, openRun, runFolder } from '../../libs/testing';
import { benches as buildDate } from './build-date';
import { benches as pages } from './pages';
import { benches as recheck } from './recheck';
import { benches as rules } from './rules';
import { millionRows, sheets } from './sheets/sheets';
import { benches as whichPart } from './which-part';

const ALL = [buildDate, rules, whichPart, recheck, pages, sheets, millionRows];

/** Runs the benches named on the command line, or all; one JSON object a line. The exit code is 1 when a goal is missed. */
async function main(): Promise<void> {
  const wanted = process.argv.slice(2);
  const names = ALL.map(({ name }) => name);
  const unknown = wanted.filter((name) => !names.includes(name));
  if (unknown.length > 0) {
    process.stderr.write(`There is no bench '${unknown[0]}', but there are ${names.join(', ')}.\n`);
    process.exitCode = 2;
    return;
  }
  await closeDeadRuns();
  openRun();
  try {
    for (const bench of ALL.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
      for await (const line of await bench.run()) {
        process.stdout.write(`${JSON.stringify(line)}\n`);
        if (!line.holds) process.exitCode = 1;
      }
    }
  } finally {
    await closeRun(runFolder());
  }
}

void main();
