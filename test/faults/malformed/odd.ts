import fc, { type Arbitrary } from 'fast-check';

/** Text that stands for bare JSON which no value of the language gives: `{{1e309}}` in quotes becomes 1e309. */
const bare = (text: string): string => `{{${text}}}`;

/** The body as text; what stands for bare JSON is put in, and `%proto%` becomes a field of the name `__proto__`. */
export function written(body: unknown): string {
  return (JSON.stringify(body) ?? '').replace(/"\{\{([^"\\]*)\}\}"/g, '$1').replace(/"%proto%":/g, '"__proto__":');
}

const ODD_TEXTS = [
  '',
  ' ',
  '\0',
  'a\0b',
  '\ud800',
  'x\udfff',
  '\u202e',
  'e\u0301'.repeat(40),
  '__proto__',
  'constructor',
  "'; DROP TABLE ticket; --",
  '%',
  '\\',
  '<script>',
  '=1+1',
  'x'.repeat(3_000),
  '2026-02-30',
  '9999-12-31',
  '0001-01-01',
  '-000001-01-01',
  '2026-11-20T25:61:61Z',
  'NaN',
  '[object Object]',
  '\r\nX: y',
];
const ODD_NUMBERS = [0, -0, -1, 1.5, 1e-9, 2 ** 31, -(2 ** 31) - 1, 2 ** 53, 2 ** 53 + 2, 1e21, 1e308, 99_999_999];
const BARE = ['1e309', '-1e309', '1e-400', '123456789012345678901234567890', '-0'];

export const oddText: Arbitrary<string> = fc.oneof(
  fc.constantFrom(...ODD_TEXTS),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 12 }).map((codes) => String.fromCharCode(...codes)),
);

/** A value that hardly any field takes. */
export const oddValue: Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: oddText },
  { weight: 3, arbitrary: fc.constantFrom<number>(...ODD_NUMBERS) },
  { weight: 2, arbitrary: fc.constantFrom(...BARE).map(bare) },
  { weight: 2, arbitrary: fc.constantFrom<unknown>(null, true, false, [], {}, [[]], [null], { '%proto%': { a: 1 } }) },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
  { weight: 1, arbitrary: fc.constant({ constructor: { prototype: { role: 'administrator' } }, length: 1e9 }) },
);

/** Once in so many times a value of the arbitrary, else none. */
export const seldom = <T>(arbitrary: Arbitrary<T>, onceIn: number): Arbitrary<T | undefined> =>
  fc.oneof({ weight: onceIn - 1, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary });

/** What is no JSON at all, or JSON of an odd kind. */
export const oddBody: Arbitrary<string> = fc.oneof(
  fc.constantFrom('', '{', '[', 'null', '"', '{}', '[]', '{"a":1,"a":2}', '\ufeff{}', '{"a":\u0000}', "{'a':1}"),
  fc.constant('['.repeat(5_000) + ']'.repeat(5_000)),
  fc.json({ maxDepth: 4 }),
  oddValue.map(written),
  oddText,
);
