import 'reflect-metadata';
import { RequestMethod, type Type } from '@nestjs/common';
import {
  HEADERS_METADATA,
  HTTP_CODE_METADATA,
  METHOD_METADATA,
  PATH_METADATA,
  ROUTE_ARGS_METADATA,
  SSE_METADATA,
} from '@nestjs/common/constants';
import type { z } from 'zod';
import { PERMISSION_KEY, type RoutePermission } from '../auth/permit';
import { textOf } from '../auth/route-list';
import { readVersion } from '../http/if-match';
import { isRepeatable } from '../http/repeat.interceptor';
import { RowIdPipe } from '../http/row-id';
import { WORDS_KEY, type RouteWords } from './says';

/** A schema with the name of the class that carries it on the route. */
export interface NamedSchema {
  readonly name: string;
  readonly schema: z.ZodType;
}

/** One route as its decorators tell it. */
export interface Operation {
  /** Such as `tickets-open`; unique. */
  readonly id: string;
  readonly method: string;
  /** Without the prefix; parameters as `{name}`. */
  readonly path: string;
  readonly tag: string;
  readonly permission: RoutePermission;
  readonly words: RouteWords | undefined;
  readonly pathParameters: readonly { name: string; isRowId: boolean }[];
  readonly query: NamedSchema | null;
  readonly body: NamedSchema | null;
  readonly answer: NamedSchema | null;
  readonly status: number;
  /** What it answers with when that is not JSON. */
  readonly mediaTypes: readonly string[];
  readonly needsVersion: boolean;
  readonly repeatable: boolean;
}

const BODY = 3;
const QUERY = 4;
const PARAM = 5;

interface Argument {
  readonly index: number;
  readonly data?: unknown;
  readonly pipes?: readonly unknown[];
  readonly factory?: unknown;
}

/** Every operation of the controllers, in the order they are declared. */
export function operationsOf(controllers: readonly Type[]): readonly Operation[] {
  return controllers.flatMap((controller) => {
    const prototype = controller.prototype as Record<string, unknown>;
    return Object.getOwnPropertyNames(prototype)
      .filter((name) => name !== 'constructor' && isRoute(prototype[name]))
      .map((name) => operationOf(controller, name, prototype[name] as () => unknown));
  });
}

/** Name of the group of a controller's operations, such as `Serial schemes`. */
export function tagOf(controller: Type): string {
  const words = controller.name.replace(/Controller$/, '').replace(/([a-z])([A-Z])/g, '$1 $2');
  return words.charAt(0) + words.slice(1).toLowerCase();
}

const isRoute = (value: unknown): boolean =>
  typeof value === 'function' && Reflect.hasMetadata(PATH_METADATA, value) === true;

function operationOf(controller: Type, name: string, handler: () => unknown): Operation {
  const read = (key: string): unknown => Reflect.getMetadata(key, handler);
  const method = RequestMethod[(read(METHOD_METADATA) as RequestMethod | undefined) ?? 0] ?? 'GET';
  const path = [Reflect.getMetadata(PATH_METADATA, controller), read(PATH_METADATA)].map(textOf).filter(Boolean);
  const args = argumentsOf(controller, name);
  const words = read(WORDS_KEY) as RouteWords | undefined;
  return {
    id: [tagOf(controller), name].map(dashed).join('-'),
    method,
    path: `/${path.join('/')}`.replace(/:(\w+)/g, '{$1}'),
    tag: tagOf(controller),
    permission: read(PERMISSION_KEY) as RoutePermission,
    words,
    pathParameters: args
      .filter(({ kind }) => kind === String(PARAM))
      .map(({ data, pipes = [] }) => ({
        name: String(data),
        isRowId: pipes.some((pipe) => pipe instanceof RowIdPipe),
      })),
    query: schemaAt(args, QUERY, controller, name),
    body: schemaAt(args, BODY, controller, name),
    answer: schemaOf(read('ZOD_SERIALIZER_DTO_OPTIONS')),
    status: (read(HTTP_CODE_METADATA) as number | undefined) ?? (method === 'POST' ? 201 : 200),
    mediaTypes: words?.answers ?? (read(SSE_METADATA) ? ['text/event-stream'] : typeInHeaders(read(HEADERS_METADATA))),
    needsVersion: args.some(({ factory }) => factory === readVersion),
    repeatable: method !== 'GET' && isRepeatable(controller),
  };
}

const dashed = (text: string) =>
  text
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replace(/ /g, '-')
    .toLowerCase();

function argumentsOf(controller: Type, name: string): readonly (Argument & { kind: string })[] {
  const found = (Reflect.getMetadata(ROUTE_ARGS_METADATA, controller, name) ?? {}) as Record<string, Argument>;
  return Object.entries(found)
    .map(([key, argument]) => ({ ...argument, kind: key.split(':')[0]! }))
    .sort((a, b) => a.index - b.index);
}

function schemaAt(args: ReturnType<typeof argumentsOf>, kind: number, controller: Type, name: string) {
  const found = args.find((argument) => argument.kind === String(kind));
  const types = Reflect.getMetadata('design:paramtypes', controller.prototype as object, name) as unknown[] | undefined;
  return found ? schemaOf(types?.[found.index]) : null;
}

/** Classes made by createZodDto carry their schema. */
function schemaOf(dto: unknown): NamedSchema | null {
  if (typeof dto !== 'function' || !('schema' in dto)) return null;
  return { name: dto.name.replace(/_Output$/, '').replace(/Dto$/, ''), schema: dto.schema as z.ZodType };
}

function typeInHeaders(headers: unknown): readonly string[] {
  const named = (headers ?? []) as readonly { name: string; value: unknown }[];
  return named
    .filter(({ name, value }) => name.toLowerCase() === 'content-type' && typeof value === 'string')
    .map(({ value }) => String(value).split(';')[0]!);
}
