import fc from 'fast-check';
import { Company } from './company';

describe('company', () => {
  it('keeps who is alone from all others, keeps nobody waiting for a neighbour, and goes on after failures', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.scheduler(),
        fc.array(fc.record({ alone: fc.boolean(), fails: fc.boolean() }), { maxLength: 12 }),
        async (scheduler, came) => {
          const company = new Company();
          const under = new Set<number>();
          const begun: number[] = [];
          const results = came.map(({ alone, fails }, n) =>
            company
              .join(
                async () => {
                  under.add(n);
                  begun.push(n);
                  for (const other of under)
                    if (other !== n) expect([alone, came[other]!.alone]).toEqual([false, false]);
                  await scheduler.schedule(Promise.resolve());
                  under.delete(n);
                  if (fails) throw new Error('failed');
                  return n;
                },
                { alone },
              )
              .then(
                (answer) => expect([fails, answer]).toEqual([false, n]),
                (error: Error) => expect([fails, error.message]).toEqual([true, 'failed']),
              ),
          );
          await scheduler.waitIdle();
          await Promise.all(results);
          expect(begun).toEqual(came.map((_, n) => n));
        },
      ),
    );
  });

  it('has neighbours at work at the same time', async () => {
    const company = new Company();
    let came = 0;
    let both: () => void = () => undefined;
    const together = new Promise<void>((resolve) => (both = resolve));
    const work = () => {
      if (++came === 2) both();
      return together;
    };
    await Promise.all([company.join(work, { alone: false }), company.join(work, { alone: false })]);
  });
});
