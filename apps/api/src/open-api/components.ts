import { isDeepStrictEqual } from 'node:util';
import { z } from 'zod';
import * as contracts from '../../../../libs/contracts';
import type { NamedSchema } from './operations';

export type JsonSchema = Record<string, unknown>;

const AT = '#/components/schemas/';

/**
 * The schemas of the document by name, as JSON Schema 2020-12, made from the Zod schemas that check the wire. What is
 * asked and what is answered can differ in one schema (defaults, trimmed text): then the asked one has `Input` behind
 * its name.
 */
export class Components {
  private readonly registry = z.registry<{ id: string }>();
  private readonly ids = new Map<string, z.ZodType>();
  private made: { input: Record<string, JsonSchema>; output: Record<string, JsonSchema>; differ: Set<string> } | null =
    null;

  constructor() {
    for (const [name, value] of Object.entries(contracts)) {
      if (value instanceof z.ZodType) this.add({ name: name.charAt(0).toUpperCase() + name.slice(1), schema: value });
    }
  }

  /** Makes a schema known under its name; one that is known already keeps the name it has. */
  add({ name, schema }: NamedSchema): void {
    if (this.registry.has(schema)) return;
    if (this.ids.has(name)) throw new Error(`Two different schemas of the API are called '${name}'.`);
    this.ids.set(name, schema);
    this.registry.add(schema, { id: name });
  }

  /** Reference to a schema that was made known, as it is asked or as it is answered. */
  refTo(schema: z.ZodType, io: 'input' | 'output'): JsonSchema {
    return { $ref: AT + this.nameOf(this.registry.get(schema)!.id, io) };
  }

  /** The schema itself, as it is asked. */
  asked(schema: z.ZodType): JsonSchema {
    return this.rewritten(this.all().input[this.registry.get(schema)!.id]!, 'input');
  }

  /** Every schema that the given part of the document refers to, directly or through others. */
  reachableFrom(part: unknown): Record<string, JsonSchema> {
    const found: Record<string, JsonSchema> = {};
    const walk = (value: unknown) => {
      for (const [, name] of JSON.stringify(value).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)) {
        if (found[name!]) continue;
        found[name!] = this.named(name!);
        walk(found[name!]);
      }
    };
    walk(part);
    return Object.fromEntries(Object.entries(found).sort(([a], [b]) => (a < b ? -1 : 1)));
  }

  private named(name: string): JsonSchema {
    const { output, input } = this.all();
    if (output[name]) return this.rewritten(output[name], 'output');
    return this.rewritten(input[name.replace(/Input$/, '')]!, 'input');
  }

  private nameOf(id: string, io: 'input' | 'output'): string {
    return io === 'input' && this.all().differ.has(id) ? `${id}Input` : id;
  }

  private rewritten(schema: JsonSchema, io: 'input' | 'output'): JsonSchema {
    const text = JSON.stringify(schema).replace(
      /"\$ref":"#\/components\/schemas\/([^"]+)"/g,
      (_, id: string) => `"$ref":"${AT}${this.nameOf(id, io)}"`,
    );
    return JSON.parse(text) as JsonSchema;
  }

  private all() {
    this.made ??= this.make();
    return this.made;
  }

  private make() {
    const [input, output] = (['input', 'output'] as const).map((io) => this.schemas(io)) as [Schemas, Schemas];
    const differ = new Set(Object.keys(output).filter((name) => !isDeepStrictEqual(input[name], output[name])));
    for (let before = -1; before !== differ.size;) {
      before = differ.size;
      for (const [name, schema] of Object.entries(output)) if (refersTo(schema, differ)) differ.add(name);
    }
    return { input, output, differ };
  }

  private schemas(io: 'input' | 'output'): Schemas {
    const { schemas } = z.toJSONSchema(this.registry, {
      io,
      uri: (id) => AT + id,
      unrepresentable: 'any',
      override: ({ jsonSchema }) => {
        // The pattern of an instant is long and says no more than the format does.
        if (jsonSchema.format === 'date-time') delete jsonSchema.pattern;
        nameTheKeys(jsonSchema);
      },
    });
    const named = Object.entries(schemas).filter(([name]) => name !== '__shared');
    return Object.fromEntries(named.map(([name, { $schema: _s, $id: _i, ...schema }]) => [name, schema as JsonSchema]));
  }
}

type Schemas = Record<string, JsonSchema>;

/** A record over a closed list of keys is an object with those properties; readers and generators know that form. */
function nameTheKeys(schema: JsonSchema): void {
  const keys = (schema.propertyNames as { enum?: string[] } | undefined)?.enum;
  if (!keys) return;
  schema.properties = Object.fromEntries(keys.map((key) => [key, schema.additionalProperties]));
  schema.additionalProperties = false;
  delete schema.propertyNames;
}

function refersTo(schema: JsonSchema, names: ReadonlySet<string>): boolean {
  const refs = JSON.stringify(schema).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g);
  return [...refs].some(([, name]) => names.has(name!));
}
