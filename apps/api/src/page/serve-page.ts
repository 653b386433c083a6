import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { ProblemError } from '../http/problem-error';
import { sendProblem } from '../http/problem.filter';

/**
 * Serves the built page. Files with a hash in their name never change and are kept for a year; the page itself is
 * asked for anew each time; what the build has packed is sent packed to who can unpack it. Every other address of the page is the page, which finds its own way from there.
 */
export async function servePage(app: NestFastifyApplication, folder: string): Promise<void> {
  const files = new Set(filesIn(folder));
  await app.register(fastifyStatic, { root: folder, serve: false, preCompressed: true, setHeaders: nameCharset });
  app
    .getHttpAdapter()
    .getInstance()
    .get('/*', (request: FastifyRequest, reply: FastifyReply) => {
      const path = decodedPath(request.url);
      if (path === 'api' || path.startsWith('api/')) return sendProblem(reply, nothingHere());
      if (path !== 'index.html' && files.has(path)) {
        const keep = path.startsWith('assets/') ? { maxAge: '365d', immutable: true } : { maxAge: '1h' };
        return reply.sendFile(path, keep);
      }
      if (!files.has('index.html')) return sendProblem(reply, notBuilt());
      return reply.header('cache-control', 'no-cache').sendFile('index.html', { cacheControl: false });
    });
}

/** Of a picture that is text the library tells no charset. */
function nameCharset(reply: FastifyReply): void {
  if (reply.getHeader('content-type') === 'image/svg+xml') reply.type('image/svg+xml; charset=utf-8');
}

const nothingHere = () => new ProblemError(404, 'not-found', 'There is nothing under this address.');
const notBuilt = () => new ProblemError(503, 'page-not-built', 'The page is not built yet: npm run build makes it.');

function decodedPath(url: string): string {
  try {
    return decodeURIComponent(new URL(url, 'http://page').pathname).slice(1);
  } catch {
    return '';
  }
}

function filesIn(folder: string): string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
  } catch {
    return [];
  }
}
