import helmet from '@fastify/helmet';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

/**
 * What a browser may do with our pages. Scripts come from here alone, none stands in a page. Styles may stand in the
 * page, because the component library sets its colour variables and positions in style elements and attributes at run
 * time; a style can run no code.
 */
export async function setSecurityHeaders(app: NestFastifyApplication): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    // Over plain http browsers ignore it; over https it holds for a year.
    strictTransportSecurity: { maxAge: 31_536_000 },
    crossOriginEmbedderPolicy: false,
  });
}
