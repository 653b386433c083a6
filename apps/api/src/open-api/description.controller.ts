import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Controller, Get, Header, Inject, Param, Res } from '@nestjs/common';
import { ModulesContainer } from '@nestjs/core';
import type { FastifyReply } from 'fastify';
import { Permit } from '../auth/permit';
import { controllersOf } from '../auth/route-list';
import { ProblemError } from '../http/problem-error';
import { describeApi, type OpenApiDocument } from './document';
import { READER_PAGE, READER_START } from './reader-page';
import { Says } from './says';

const READER_FOLDER = dirname(require.resolve('swagger-ui-dist/package.json'));

/** The reader's own files, and of which kind each is. */
const FILES: Readonly<Record<string, string>> = {
  'swagger-ui.css': 'text/css; charset=utf-8',
  'swagger-ui-bundle.js': 'text/javascript; charset=utf-8',
};

@Controller()
@Says('The description of this API, for programs and for people.')
export class DescriptionController {
  private document: OpenApiDocument | undefined;

  constructor(@Inject(ModulesContainer) private readonly modules: ModulesContainer) {}

  @Get('openapi.json')
  @Permit('see-api')
  @Says('The API as an OpenAPI 3.1 document.', { answers: ['application/json'] })
  describe(): OpenApiDocument {
    this.document ??= describeApi(controllersOf(this.modules));
    return this.document;
  }

  @Get('reader')
  @Permit('see-api')
  @Header('content-type', 'text/html; charset=utf-8')
  @Says('A page to read the description and try the API out.')
  reader(): string {
    return READER_PAGE;
  }

  @Get('reader/:file')
  @Permit('see-api')
  @Says('A file of the reader page.', { answers: ['text/javascript', 'text/css'] })
  file(@Param('file') file: string, @Res({ passthrough: true }) reply: FastifyReply): string {
    const type = file === 'start.js' ? FILES['swagger-ui-bundle.js'] : Object.hasOwn(FILES, file) && FILES[file];
    if (!type) throw new ProblemError(404, 'not-found', `The reader has no file '${file}'.`);
    void reply.header('content-type', type);
    return file === 'start.js' ? READER_START : readFileSync(join(READER_FOLDER, file), 'utf8');
  }
}
