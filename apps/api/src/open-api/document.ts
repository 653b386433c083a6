import type { Type } from '@nestjs/common';
import { problem, scopesFor, TOKEN_SCOPE_NAMES, TOKEN_SCOPES } from '../../../../libs/contracts';
import { isPermission } from '../auth/permit';
import { Components, type JsonSchema } from './components';
import { recordedExamples, type Example, type Examples } from './examples';
import { operationsOf, tagOf, type Operation } from './operations';
import { refusalName, refusalResponses, refusalsOf } from './refusals';
import { WORDS_KEY, type RouteWords } from './says';

export type OpenApiDocument = Record<string, unknown> & {
  readonly openapi: string;
  readonly paths: Record<string, Record<string, Record<string, unknown>>>;
};

/** The description of every route as OpenAPI 3.1, made from the decorators and schemas the routes themselves use. */
export function describeApi(controllers: readonly Type[], examples: Examples = recordedExamples): OpenApiDocument {
  const components = new Components();
  const operations = [...operationsOf(controllers)].sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));
  for (const { query, body, answer } of operations) {
    for (const named of [query, body, answer]) if (named) components.add(named);
  }
  const paths: OpenApiDocument['paths'] = {};
  for (const operation of operations) {
    const item = (paths[operation.path] ??= {});
    item[operation.method.toLowerCase()] = describe(operation, components, examples[operation.id]);
  }
  const responses = refusalResponses(components.refTo(problem, 'output'));
  const schemas = components.reachableFrom([paths, responses]);
  return {
    openapi: '3.1.1',
    info: INFO,
    servers: [{ url: '/api', description: 'This server.' }],
    tags: controllers
      .map(describeTag)
      .filter(({ description }) => description !== undefined)
      .sort((a, b) => (a.name < b.name ? -1 : 1)),
    paths,
    components: { securitySchemes: SECURITY_SCHEMES, responses, schemas },
  };
}

const INFO = {
  title: 'Revright',
  version: '1',
  summary: 'Which part revision is right for this build date, as known today.',
  description: [
    'Days are civil dates (`2026-11-20`), instants ISO 8601 with their offset, money is in minor units.',
    'A change of something that has a version names that version in `If-Match`; the answer brings the next in `ETag`.',
    'Where `Idempotency-Key` is taken, the same key within a day brings the same answer, and the change is made once.',
    'Refusals are problem details (RFC 9457): `type` is a stable code, `detail` one sentence for a person.',
  ].join('\n\n'),
  license: { name: 'All rights reserved', identifier: 'LicenseRef-Proprietary' },
};

const SECURITY_SCHEMES = {
  session: {
    type: 'apiKey',
    in: 'cookie',
    name: 'revright',
    description: 'The session of a person who has signed in. Over https the cookie is called `__Host-revright`.',
  },
  token: {
    type: 'http',
    scheme: 'bearer',
    description: [
      "A token that a manager or an administrator made for another program. It asks in its maker's name and may do what",
      'both its scopes and its maker may. Scopes:\n',
      ...TOKEN_SCOPE_NAMES.map((name) => {
        const { says, may } = TOKEN_SCOPES[name];
        return `- \`${name}\`: ${says} (${may.join(', ')})`;
      }),
    ].join('\n'),
  },
};

function describeTag(controller: Type): { name: string; description: string | undefined } {
  const words = Reflect.getMetadata(WORDS_KEY, controller) as RouteWords | undefined;
  return { name: tagOf(controller), description: words?.summary };
}

function describe(operation: Operation, components: Components, example?: Example): Record<string, unknown> {
  const { id, tag, words, permission, body } = operation;
  const who = isPermission(permission) ? `Needs the permission \`${permission}\`.` : null;
  const scopes = isPermission(permission) ? scopesFor(permission).map((scope) => `\`${scope}\``) : [];
  const programs = scopes.length > 0 ? `A token needs the scope ${scopes.join(' or ')}.` : null;
  const description = [words?.more, who, programs].filter(Boolean).join('\n\n');
  const parameters = parametersOf(operation, components, example?.parameters ?? {});
  const json = body && { schema: components.refTo(body.schema, 'input'), ...asExample(example?.body) };
  return {
    operationId: id,
    tags: [tag],
    summary: words?.summary,
    ...(description ? { description } : {}),
    security: permission === 'open' ? [] : [{ session: [] }, ...(scopes.length > 0 ? [{ token: [] }] : [])],
    ...(parameters.length > 0 ? { parameters } : {}),
    ...(json ? { requestBody: { required: true, content: { [words?.takes ?? 'application/json']: json } } } : {}),
    ...(!json && words?.takes === MULTIPART ? { requestBody: ONE_FILE } : {}),
    responses: {
      [operation.status]: answerOf(operation, components, example?.answer),
      ...Object.fromEntries(
        refusalsOf(operation).map((status) => [status, { $ref: `#/components/responses/${refusalName(status)}` }]),
      ),
    },
  };
}

const MULTIPART = 'multipart/form-data';
/** A form with one file in it. */
const ONE_FILE = {
  required: true,
  content: {
    [MULTIPART]: {
      schema: {
        type: 'object',
        required: ['file'],
        properties: { file: { type: 'string', contentMediaType: 'application/octet-stream' } },
      },
    },
  },
};

const asExample = (value: unknown): { example?: unknown } => (value === undefined ? {} : { example: value });

function answerOf(operation: Operation, components: Components, example: unknown): Record<string, unknown> {
  const { answer, mediaTypes, words } = operation;
  const description = words?.summary ?? '';
  if (answer) {
    const schema = components.refTo(answer.schema, 'output');
    return { description, content: { 'application/json': { schema, ...asExample(example) } } };
  }
  if (mediaTypes.length === 0) return { description };
  const content = Object.fromEntries(
    mediaTypes.map((type) => [type, { schema: schemaFor(type), ...asExample(example) }]),
  );
  return { description, content };
}

/** Text is a string; anything else is bytes, which JSON Schema has no word for. */
const schemaFor = (type: string): JsonSchema => (type.startsWith('text/') ? { type: 'string' } : {});

function parametersOf(
  { pathParameters, query, needsVersion, repeatable }: Operation,
  components: Components,
  examples: Readonly<Record<string, unknown>>,
): Record<string, unknown>[] {
  const asked = query ? components.asked(query.schema) : {};
  const required = (asked.required ?? []) as string[];
  return [
    ...pathParameters.map(({ name, isRowId }) => ({
      name,
      in: 'path',
      required: true,
      schema: isRowId ? ROW_ID : { type: 'string' },
      ...asExample(examples[name]),
    })),
    ...Object.entries((asked.properties ?? {}) as Record<string, JsonSchema>).map(([name, schema]) => ({
      name,
      in: 'query',
      required: required.includes(name),
      schema,
      ...asExample(examples[name]),
    })),
    ...(needsVersion ? [VERSION] : []),
    ...(repeatable ? [KEY] : []),
  ];
}

const ROW_ID = { type: 'integer', minimum: 1, maximum: 2_147_483_647 };

const VERSION = {
  name: 'If-Match',
  in: 'header',
  required: true,
  description: 'The version the change was made on, in quotes, as the last answer told it in `ETag`.',
  schema: { type: 'string', pattern: '^"\\d{1,9}"$' },
  example: '"7"',
};

const KEY = {
  name: 'Idempotency-Key',
  in: 'header',
  required: false,
  description: 'Makes it safe to send the change again: under one key it is made once.',
  schema: { type: 'string', minLength: 1, maxLength: 255 },
  example: '7b1c9a4e20f34f1d',
};
