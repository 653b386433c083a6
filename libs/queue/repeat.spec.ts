import { repeat } from './repeat';

const FOR_EVER_MS = 1_000_000;

describe('repeat', () => {
  it('goes on at once while there is more, rests otherwise, and wakes when nudged', async () => {
    let turns = 0;
    const loop = repeat(() => Promise.resolve(++turns < 3), { everyMs: FOR_EVER_MS, onError: fail });
    await new Promise(setImmediate);
    expect(turns).toBe(3);
    loop.nudge();
    await new Promise(setImmediate);
    expect(turns).toBe(4);
    await loop.close();
  });

  it('does not miss a nudge that comes during a turn', async () => {
    let turns = 0;
    const again = new Promise<void>((resolve) => {
      const loop = repeat(
        async () => {
          await new Promise(setImmediate);
          if (++turns === 1) loop.nudge();
          else void loop.close().then(resolve);
          return false;
        },
        { everyMs: FOR_EVER_MS, onError: fail },
      );
    });
    await again;
    expect(turns).toBe(2);
  });

  it('tells of a turn that throws and goes on; closing waits for the turn under way', async () => {
    const told: unknown[] = [];
    let ended = false;
    const loop = repeat(
      async () => {
        if (told.length === 0) throw new Error('no');
        await new Promise(setImmediate);
        ended = true;
        return false;
      },
      { everyMs: FOR_EVER_MS, onError: (error) => told.push(error) },
    );
    await new Promise(setImmediate);
    loop.nudge();
    await new Promise((resolve) => process.nextTick(resolve));
    await loop.close();
    expect(told).toHaveLength(1);
    expect(ended).toBe(true);
  });
});

function fail(error: unknown): void {
  throw error;
}
