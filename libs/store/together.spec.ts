import { Together } from './together';

describe('asking together', () => {
  const held = () => {
    const asked: (readonly string[])[] = [];
    const answers: ((found: ReadonlyMap<string, string>) => void)[] = [];
    const refusals: ((error: Error) => void)[] = [];
    const together = new Together<string, string>((keys) => {
      asked.push(keys);
      return new Promise((resolve, reject) => {
        answers.push(resolve);
        refusals.push(reject);
      });
    });
    return { together, asked, answers, refusals };
  };
  const settled = () => new Promise((resolve) => setImmediate(resolve));

  it('asks for all who came meanwhile in one question, and never answers from one that began before they asked', async () => {
    const { together, asked, answers } = held();
    const first = together.of('a');
    const [again, other, unknown] = [together.of('a'), together.of('b'), together.of('c')];
    expect(asked).toEqual([['a']]);
    answers[0]!(new Map([['a', 'as it was']]));
    expect(await first).toBe('as it was');
    await settled();
    expect(asked).toEqual([['a'], ['a', 'b', 'c']]);
    answers[1]!(
      new Map([
        ['a', 'as it is'],
        ['b', 'another'],
      ]),
    );
    expect(await Promise.all([again, other, unknown])).toEqual(['as it is', 'another', undefined]);
  });

  it('tells a failure to those who were asked for, and goes on with the others', async () => {
    const { together, answers, refusals } = held();
    const first = together.of('a').catch((error: Error) => error.message);
    const second = together.of('b');
    refusals[0]!(new Error('away'));
    expect(await first).toBe('away');
    await settled();
    answers[1]!(new Map([['b', 'there']]));
    expect(await second).toBe('there');
  });
});
