import { Controller, Get, Inject } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import type { Ports } from '../../../../libs/usecases';
import { OpenToAll } from '../auth/permit';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class HealthDto extends createZodDto(z.object({ ok: z.literal(true) })) {}

@Controller('health')
@Says('Whether the program runs.')
export class HealthController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  /** Fine while the database answers; a database that does not makes it 503 like any other route. */
  @Get()
  @OpenToAll()
  @Says('Whether the program answers and reaches its database.')
  @ZodResponse({ status: 200, type: HealthDto })
  async health() {
    await this.ports.store.rulebook.latest();
    return { ok: true as const };
  }
}
