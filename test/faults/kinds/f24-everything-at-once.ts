import { once } from 'node:events';
import type { ChildProcess } from 'node:child_process';
import { disturb, pause } from '../disturb';
import type { Fault, FaultPlan } from '../fault';
import { checkStillAlive } from '../nothing-lost';

const FAULTS_A_SCENE = 5;

/** F24: a drawn mixture of the others, some of them while the last one is being recovered from. */
export const everythingAtOnce: Fault = {
  id: 'F24',
  title: 'a drawn mixture, also during recovery',
  full: 500,
  short: 5,
  async run(plan, tally) {
    const workers = [await plan.house.workerProcess()];
    await plan.house.work('queue');
    const drawn = new Map<string, number>();
    await disturb(plan, tally, { units: 800, perScene: FAULTS_A_SCENE }, async () => {
      const name = plan.draw.oneOf(Object.keys(STRIKES));
      drawn.set(name, (drawn.get(name) ?? 0) + 1);
      await STRIKES[name]!(plan, workers);
    });
    await checkStillAlive(plan, tally);
    tally.say([...drawn].map(([name, times]) => `${name} x${times}`).join(', '));
  },
};

const STRIKES: Record<string, (plan: FaultPlan, workers: ChildProcess[]) => Promise<void>> = {
  async 'worker killed'({ house }, workers) {
    const child = workers.shift()!;
    child.kill('SIGKILL');
    await once(child, 'exit');
    workers.push(await house.workerProcess());
  },
  'queue forgot': ({ house }) => house.flushRedis(),
  async 'queue away'({ house, awayMs }) {
    await house.stopRedis();
    await pause(awayMs / 3);
    await house.returnRedis();
  },
  async 'queue away, sessions ended'({ house, awayMs }) {
    await house.stopRedis();
    await house.cutSessions();
    await pause(awayMs / 3);
    await house.returnRedis();
  },
  'sessions ended': async ({ house }) => void (await house.cutSessions()),
  async 'lines cut twice'({ house }) {
    house.door.cut();
    await pause(100);
    house.door.cut();
  },
  async 'database stopped'({ house }) {
    await house.breakDatabase();
    await pause(200);
    await house.returnDatabase();
  },
};
