import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DocumentBuilder, SwaggerModule } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { cleanupOpenApiDoc } from 'nestjs-zod';

/** The description of every route at /api/openapi.json, made from the same schemas that check the requests. */
export function serveOpenApi(app: NestFastifyApplication): void {
  const about = new DocumentBuilder().setTitle('Revright').setVersion('1').build();
  const document = cleanupOpenApiDoc(SwaggerModule.createDocument(app, about));
  app
    .getHttpAdapter()
    .getInstance()
    .get('/api/openapi.json', (_request: FastifyRequest, reply: FastifyReply) => reply.send(document));
}
