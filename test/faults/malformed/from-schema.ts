import fc, { type Arbitrary } from 'fast-check';
import { oddText, oddValue, seldom } from './odd';

/** As much of JSON Schema as the API's own document uses. */
export interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema | boolean;
  readonly format?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

const DEEPEST = 5;
const SMALL_IDS = { min: 1, max: 8 };

/** Values that fit a schema nearly: now and then a field is odd, missing or not of the schema. */
export class FromSchema {
  private readonly known = new Map<Schema, Arbitrary<unknown>>();

  constructor(private readonly schemas: Readonly<Record<string, Schema>>) {}

  nearly(schema: Schema, depth = 0): Arbitrary<unknown> {
    if (depth > DEEPEST) return oddValue;
    const known = depth === 0 ? this.known.get(schema) : undefined;
    if (known) return known;
    const made = fc.oneof(
      { weight: depth === 0 ? 30 : 12, arbitrary: this.fitting(schema, depth) },
      { weight: 1, arbitrary: oddValue },
    );
    if (depth === 0) this.known.set(schema, made);
    return made;
  }

  private fitting(schema: Schema, depth: number): Arbitrary<unknown> {
    if (schema.$ref) return this.nearly(this.schemas[schema.$ref.split('/').at(-1)!] ?? {}, depth + 1);
    if ('const' in schema) return fc.constant(schema.const);
    if (schema.enum) return fc.constantFrom(...schema.enum);
    const choices = schema.anyOf ?? schema.oneOf ?? schema.allOf;
    if (choices) return fc.oneof(...choices.map((one) => this.nearly(one, depth + 1)));
    const type = typeof schema.type === 'string' ? schema.type : schema.type?.[0];
    if (schema.properties || type === 'object') return this.object(schema, depth);
    if (type === 'array')
      return fc.array(this.nearly(typeof schema.items === 'object' ? schema.items : {}, depth + 1), { maxLength: 3 });
    if (type === 'integer' || type === 'number')
      return fc.oneof(fc.integer(SMALL_IDS), fc.constantFrom(...[schema.minimum, schema.maximum].filter(isNumber), 7));
    if (type === 'boolean') return fc.boolean();
    if (type === 'null') return fc.constant(null);
    return type === 'string' ? textOf(schema) : oddValue;
  }

  private object({ properties = {} }: Schema, depth: number): Arbitrary<unknown> {
    const fields = Object.fromEntries(
      Object.entries(properties).map(([name, schema]) => [
        name,
        fc.option(this.nearly(schema, depth + 1), { nil: undefined, freq: 12 }),
      ]),
    );
    const more = seldom(fc.dictionary(fc.constantFrom('%proto%', 'constructor', 'id', 'version', 'role'), oddValue), 6);
    return fc.tuple(fc.record(fields), more).map(([own, other]) => ({ ...own, ...other }));
  }
}

const isNumber = (value: unknown): value is number => typeof value === 'number';

/** Words and codes that stand in the shop, days and instants near today; else nearly any text. */
function textOf({ format }: Schema): Arbitrary<string> {
  if (format === 'date') return fc.constantFrom('2026-11-20', '2026-12-01', '2017-03-01', '0001-01-01', '9999-12-31');
  if (format === 'date-time') return fc.constantFrom('2026-11-20T10:00:00Z', '2026-11-20T10:00:00.123456789+14:00');
  const usual = fc.constantFrom(
    ...['SNOW-2', 'S2', 'AUG-PIN', 'BELT', 'HOLM', 'HOLM/70412A', '70-412B', '80-001', '17030001', 'B1', 'PL-7'],
    ...['PIN-EARLY', 'Ole Brand', '555 0101', 'ole@example.org', '2026-11-20', '2017-03', 'https://example.org/'],
  );
  return fc.oneof({ weight: 4, arbitrary: usual }, { weight: 1, arbitrary: oddText });
}

/** The same value with something in it put in place of something else, somewhere. */
export function disturbed(value: unknown): Arbitrary<unknown> {
  const paths = pathsOf(value, []);
  return fc
    .array(fc.tuple(fc.constantFrom(...paths), fc.option(oddValue, { nil: undefined, freq: 5 })), { maxLength: 3 })
    .map((changes) => changes.reduce<unknown>((made, [path, by]) => put(made, path, by), value));
}

type Path = readonly (string | number)[];

function pathsOf(value: unknown, at: Path): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...at, key]))];
}

function put(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
  if (key === undefined) return by;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value))
    return (value as unknown[]).map((one, i) => (String(i) === String(key) ? put(one, rest, by) : one));
  return { ...value, [key]: put((value as Record<string, unknown>)[key], rest, by) };
}
