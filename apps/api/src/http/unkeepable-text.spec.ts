import { unkeepableText } from './unkeepable-text';

describe('text that the database cannot keep', () => {
  it.each([
    ['a NUL', { a: 'x\0y' }, 'a'],
    ['the first half of a character', { a: { b: ['x', '\ud83d'] } }, 'a.b.1'],
    ['the second half alone', ['\udd27'], '0'],
    ['a name of a field', { a: { '\0': 1 } }, 'a'],
    ['the whole', '\ud83d', ''],
  ])('is found where it is %s', (_, value, at) => {
    expect(unkeepableText(value)).toBe(at);
  });

  it('is not what is whole, whatever its alphabet', () => {
    expect(unkeepableText({ a: '\u{1f527} \u202e e\u0301', b: [null, 1, true], c: undefined })).toBeNull();
  });

  it('is looked for at any depth', () => {
    let deep: unknown = '\0';
    for (let i = 0; i < 100_000; i++) deep = [deep];
    expect(unkeepableText(deep)).toMatch(/^0(\.0)+$/);
  });
});
