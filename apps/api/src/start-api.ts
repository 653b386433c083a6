import 'reflect-metadata';
import { join } from 'node:path';
import cookie from '@fastify/cookie';
import multipart from '@fastify/multipart';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { repoRoot } from '../../../libs/config';
import { asProgram } from '../../../libs/store';
import { addPublishedEditions } from '../../../libs/usecases';
import { AppModule } from './app.module';
import { howToSignInFirst } from './first-administrator';
import { requirePermissions, routeList, type RouteEntry } from './auth/route-list';
import { refuseOtherSites } from './auth/origin-check';
import { levelsFor } from './log-levels';
import { Ending } from './health/ending';
import { refuseDeepBodies } from './http/levels';
import { nameRequests, requestIdOf, RequestLogger } from './http/request-id';
import { RequestsUnderWay } from './http/requests-under-way';
import { sealWithNewKey } from './renew-seals';
import { servePage } from './page/serve-page';
import { setSecurityHeaders } from './page/security-headers';
import { keepTrailHead } from './trail-head';
import { shopClock } from './shop-clock';
import { refuseDemoInProduction } from './start-refused';
import { LARGEST_FILE } from './sheets/take-file';
import type { ApiOptions } from './tokens';

/** The API as it runs: where it listens, what it answers to, and its end. */
export interface RunningApi {
  /** Such as `http://127.0.0.1:4780`. */
  readonly url: string;
  readonly routes: readonly RouteEntry[];
  /** Sentences for the console: how to sign in to a shop in which nobody can yet. */
  readonly notices: readonly string[];
  /** Stops listening, answers what is under way, then ends open streams; the store is its owner's to close. */
  close(): Promise<void>;
}

/** Longest wait for the answers under way; shorter than what those who stop programs usually allow. */
const LONGEST_FINISH_MS = 10_000;
const LARGEST_BODY = 5 * 1024 * 1024;

/**
 * Starts the API and the page on the configured host and port (0 picks a free one). Throws when a route names no
 * permission, with the system's error code when the
 * port is taken, and {@link StartRefused} when it would be run in a way that is not safe.
 */
export async function startApi(options: ApiOptions): Promise<RunningApi> {
  const { config } = options;
  await refuseDemoInProduction(config, options);
  const adapter = new FastifyAdapter({
    forceCloseConnections: true,
    // What came in before the end is answered; see `close` below.
    return503OnClosing: false,
    genReqId: requestIdOf,
    bodyLimit: LARGEST_BODY,
    trustProxy: [...config.trustedProxies],
    routerOptions: { maxParamLength: 200 },
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(options), adapter, {
    logger: new RequestLogger({ json: true, colors: false, logLevels: levelsFor(config.logLevel) }),
    abortOnError: false,
  });
  try {
    app.setGlobalPrefix('api');
    const routes = routeList(app);
    requirePermissions(routes);
    nameRequests(adapter.getInstance());
    const underWay = new RequestsUnderWay(adapter.getInstance(), app.get(Ending));
    refuseOtherSites(adapter.getInstance());
    refuseDeepBodies(adapter.getInstance());
    await app.register(cookie);
    await app.register(multipart, { limits: { files: 1, fields: 8, fieldSize: 10_000, fileSize: LARGEST_FILE } });
    await setSecurityHeaders(app);
    await servePage(app, options.pageFolder ?? join(repoRoot(), 'dist', 'apps', 'web'));
    await asProgram(() => addPublishedEditions(options));
    const sealed = await sealWithNewKey(options.store, config);
    await app.listen({ port: config.port, host: config.host });
    const url = urlOf(app, config.host);
    const first = await howToSignInFirst({ store: options.store, clock: clockOf(options) }, url);
    const notices = [...sealed, ...first];
    const head = keepTrailHead(options);
    const close = async () => {
      await underWay.finish(LONGEST_FINISH_MS);
      await head.close();
      await app.close();
    };
    return { url, routes, notices, close };
  } catch (error) {
    await app.close();
    throw error;
  }
}

const clockOf = ({ clock, config }: ApiOptions) => clock ?? shopClock(config.timeZone);

function urlOf(app: NestFastifyApplication, host: string): string {
  const address = app.getHttpServer().address() as { port: number };
  const shown = host === '0.0.0.0' || host === '::' ? 'localhost' : host.includes(':') ? `[${host}]` : host;
  return `http://${shown}:${address.port}`;
}
