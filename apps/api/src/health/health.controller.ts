import { Controller, Get, Inject } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import type { Config } from '../../../../libs/config';
import { viewReadiness, type Ports } from '../../../../libs/usecases';
import { OpenToAll } from '../auth/permit';
import { answer } from '../http/answer';
import { ProblemError } from '../http/problem-error';
import { Says } from '../open-api/says';
import { CONFIG, PORTS } from '../tokens';
import { Ending } from './ending';

class HealthDto extends createZodDto(z.object({ ok: z.literal(true) })) {}
class ReadyDto extends createZodDto(z.object({ ready: z.literal(true), oldestWorkSeconds: z.number().min(0) })) {}

@Controller('health')
@Says('Whether the program runs, and whether the shop gets its work done.')
export class HealthController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(CONFIG) private readonly config: Config,
    private readonly ending: Ending,
  ) {}

  /** Fine while the database answers; a database that does not makes it 503 like any other route. */
  @Get()
  @OpenToAll()
  @Says('Whether the program answers and reaches its database.')
  @ZodResponse({ status: 200, type: HealthDto })
  async health() {
    await this.ports.store.rulebook.latest();
    return { ok: true as const };
  }

  @Get('ready')
  @OpenToAll()
  @Says(
    'Whether requests should be sent here: the database answers and is up to date, no work waits too long, and the program was not asked to end. Else 503, saying which.',
  )
  @ZodResponse({ status: 200, type: ReadyDto })
  async ready() {
    if (this.ending.begun) throw new ProblemError(503, 'not-ready', 'The program was asked to end.');
    return { ready: true as const, ...answer(await viewReadiness(this.ports, this.config.oldestWorkSeconds)) };
  }
}
