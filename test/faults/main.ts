import { parseArgs } from 'node:util';
import { closeDeadRuns, closeRun, openRun, runFolder } from '../../libs/testing';
import { Tally, type Fault } from './fault';
import { House } from './house';
import { FAULTS, lineOf, lineSoFar, runFault, withoutUniqueKey, type FaultOptions } from './run-faults';

const USAGE = `npm run faults [-- --short] [--only F1,F5] [--dose 0.1] [--seed 42] [--without unique-key|sweeper]`;
const WITHOUT = ['unique-key', 'sweeper'];
const TELL_EVERY_MS = 60_000;

/** What was asked for; null where it is no use. */
function asked() {
  try {
    return parseArgs({
      options: {
        help: { type: 'boolean', short: 'h', default: false },
        short: { type: 'boolean', default: false },
        only: { type: 'string' },
        dose: { type: 'string', default: '1' },
        seed: { type: 'string' },
        without: { type: 'string' },
      },
    }).values;
  } catch {
    return null;
  }
}

/** Runs the asked-for faults; the exit code is 1 when one did not hold, and 2 for bad use. */
async function main(): Promise<void> {
  const values = asked();
  if (values === null || values.help) {
    (values ? process.stdout : process.stderr).write(`${USAGE}\n`);
    process.exitCode = values ? 0 : 2;
    return;
  }
  const wanted = values.only?.split(',').map((id) => id.trim().toUpperCase());
  const faults = FAULTS.filter(({ id }) => !wanted || wanted.includes(id));
  const [dose, seed] = [Number(values.dose), Number(values.seed ?? Date.now() % 1_000_000)];
  const without = values.without;
  if (faults.length === 0 || !(dose > 0) || !Number.isInteger(seed) || (without && !WITHOUT.includes(without))) {
    process.stderr.write(`${USAGE}\n`);
    process.exitCode = 2;
    return;
  }
  const patienceMs = values.short ? 60_000 : 120_000;
  process.stdout.write(`seed ${seed}${without ? `, without ${without}: this must fail` : ''}\n`);
  await closeDeadRuns();
  openRun();
  try {
    // One house serves fault after fault, as a shop's does; after one that did not hold the next begins in a new one.
    let house: House | null = null;
    for (const fault of faults) {
      house ??= await openHouse(without);
      if (await held(house, fault, { seed, short: values.short, dose, patienceMs })) continue;
      process.exitCode = 1;
      await house.close();
      house = null;
    }
    await house?.close();
  } finally {
    await closeRun(runFolder());
  }
}

/** Writes what came of the fault, and how far it is as long as it goes on: some take hours. */
async function held(house: House, fault: Fault, options: FaultOptions): Promise<boolean> {
  const begun = Date.now();
  const seconds = () => (Date.now() - begun) / 1_000;
  const tally = new Tally();
  const telling = setInterval(() => process.stderr.write(`${lineSoFar(fault, tally, seconds())}\n`), TELL_EVERY_MS);
  const report = await runFault(house, fault, options, tally).finally(() => clearInterval(telling));
  process.stdout.write(`${lineOf(fault, report, seconds())}\n`);
  return report.problems.length === 0;
}

async function openHouse(without: string | undefined): Promise<House> {
  const house = await House.open();
  house.sweeper = without !== 'sweeper';
  if (without === 'unique-key') await withoutUniqueKey(house);
  return house;
}

void main();
