import type { BenchLine } from './bench-line';
import { BigShop } from './recheck/big-shop';
import { WhichPart } from './recheck/which-part';

const ROWS = 120_000;
const ROUNDS = Number(process.env['REVRIGHT_BENCH_ROUNDS'] ?? 5);

/** How many questions "which part?" a second are answered, beside bare routes of the same process. */
export const benches = {
  name: 'which-part',
  async run(): Promise<BenchLine[]> {
    const shop = await BigShop.open(ROWS);
    const route = await WhichPart.open(shop);
    try {
      return await route.rates(ROUNDS);
    } finally {
      await route.close();
      await shop.close();
    }
  },
};
