import { RequestMethod, type INestApplication, type Type } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants';
import { ModulesContainer } from '@nestjs/core';
import { PERMISSION_KEY, type RoutePermission } from './permit';

export interface RouteEntry {
  readonly method: string;
  /** Without the prefix; parameters as `:name`. */
  readonly path: string;
  readonly handler: string;
  readonly permission: RoutePermission | undefined;
}

/** Every controller class of the running application. */
export function controllersOf(modules: ModulesContainer): readonly Type[] {
  const controllers = [...modules.values()].flatMap((module) => [...module.controllers.values()]);
  return controllers.flatMap(({ metatype }) => (typeof metatype === 'function' ? [metatype as Type] : []));
}

/** Every route of every controller, with the permission it names. */
export function routeList(app: INestApplication): readonly RouteEntry[] {
  return controllersOf(app.get(ModulesContainer)).flatMap((metatype) => {
    const base = textOf(Reflect.getMetadata(PATH_METADATA, metatype));
    const prototype = metatype.prototype as Record<string, unknown>;
    return Object.getOwnPropertyNames(prototype).flatMap((name) => {
      const handler = prototype[name];
      if (name === 'constructor' || typeof handler !== 'function' || !Reflect.hasMetadata(PATH_METADATA, handler))
        return [];
      const path = [base, textOf(Reflect.getMetadata(PATH_METADATA, handler))].filter(Boolean).join('/');
      return [
        {
          method: RequestMethod[Reflect.getMetadata(METHOD_METADATA, handler) as RequestMethod] ?? 'GET',
          path: `/${path}`,
          handler: `${metatype.name}.${name}`,
          permission: Reflect.getMetadata(PERMISSION_KEY, handler) as RoutePermission | undefined,
        },
      ];
    });
  });
}

/** Refuses to go on when a route names no permission: a forgotten one must not be an open door. */
export function requirePermissions(routes: readonly RouteEntry[]): void {
  const without = routes.filter((route) => route.permission === undefined).map((route) => route.handler);
  if (without.length > 0) throw new Error(`These routes name no permission: ${without.join(', ')}.`);
}

/** A path from a decorator without slashes at its ends. */
export function textOf(path: unknown): string {
  const text = Array.isArray(path) ? String(path[0]) : typeof path === 'string' ? path : '';
  return text.replace(/^\/+|\/+$/g, '');
}
