import 'reflect-metadata';
import { join } from 'node:path';
import cookie from '@fastify/cookie';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { repoRoot } from '../../../libs/config';
import { addPublishedEditions } from '../../../libs/usecases';
import { AppModule } from './app.module';
import { requirePermissions, routeList, type RouteEntry } from './auth/route-list';
import { refuseOtherSites } from './auth/origin-check';
import { levelsFor } from './log-levels';
import { serveOpenApi } from './open-api';
import { servePage } from './page/serve-page';
import { setSecurityHeaders } from './page/security-headers';
import type { ApiOptions } from './tokens';

/** The API as it runs: where it listens, what it answers to, and its end. */
export interface RunningApi {
  /** Such as `http://127.0.0.1:4780`. */
  readonly url: string;
  readonly routes: readonly RouteEntry[];
  /** Ends open streams and stops listening; the store is its owner's to close. */
  close(): Promise<void>;
}

const LARGEST_BODY = 5 * 1024 * 1024;

/**
 * Starts the API and the page on the configured host and port (0 picks a free one). Throws when a route names no
 * permission, and with the system's error code when the port is taken.
 */
export async function startApi(options: ApiOptions): Promise<RunningApi> {
  const { config } = options;
  const adapter = new FastifyAdapter({
    forceCloseConnections: true,
    bodyLimit: LARGEST_BODY,
    trustProxy: 'loopback',
    routerOptions: { maxParamLength: 200 },
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(options), adapter, {
    logger: levelsFor(config.logLevel),
    abortOnError: false,
  });
  try {
    app.setGlobalPrefix('api');
    const routes = routeList(app);
    requirePermissions(routes);
    refuseOtherSites(adapter.getInstance());
    await app.register(cookie);
    await setSecurityHeaders(app);
    serveOpenApi(app);
    await servePage(app, options.pageFolder ?? join(repoRoot(), 'dist', 'apps', 'web'));
    await addPublishedEditions(options);
    await app.listen({ port: config.port, host: config.host });
    return { url: urlOf(app, config.host), routes, close: () => app.close() };
  } catch (error) {
    await app.close();
    throw error;
  }
}

function urlOf(app: NestFastifyApplication, host: string): string {
  const address = app.getHttpServer().address() as { port: number };
  const shown = host === '0.0.0.0' || host === '::' ? 'localhost' : host.includes(':') ? `[${host}]` : host;
  return `http://${shown}:${address.port}`;
}
