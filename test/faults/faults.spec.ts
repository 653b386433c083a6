import { House } from './house';
import { FAULTS, runFault, withoutUniqueKey, type FaultOptions } from './run-faults';

const OPTIONS: FaultOptions = { seed: 20_261_125, short: true, dose: 1, patienceMs: 60_000 };
const named = (id: string) => FAULTS.find((fault) => fault.id === id)!;

describe('nothing is lost and nothing happens twice', () => {
  let house: House;
  beforeAll(async () => void (house = await House.open()), 120_000);
  afterAll(() => house.close());

  it.each(FAULTS)(
    '$id: $title',
    async (fault) => {
      const report = await runFault(house, fault, OPTIONS);
      expect(report.problems).toEqual([]);
      expect(report.hits).toBeGreaterThan(0);
    },
    180_000,
  );

  it('fails when nobody looks for what was lost', async () => {
    house.sweeper = false;
    const report = await runFault(house, named('F5'), { ...OPTIONS, patienceMs: 8_000 });
    house.sweeper = true;
    expect(report.problems.join(' ')).toContain('the recheck stands at');
  }, 120_000);

  it('fails when the key that keeps a unit from a second callback is gone', async () => {
    await withoutUniqueKey(house);
    const report = await runFault(house, named('F12B'), { ...OPTIONS, patienceMs: 30_000 });
    expect(report.problems.join(' ')).toContain('| calls 2 for');
  }, 120_000);
});
