import { Controller, Get, Inject, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { figures, figuresQuery } from '../../../../libs/contracts';
import { viewFigures, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class FiguresQueryDto extends createZodDto(figuresQuery) {}
class FiguresDto extends createZodDto(figures) {}

@Controller('figures')
@Says('How benches, parts and callbacks did in a span of days.')
export class FiguresController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-figures')
  @Says('The figures of a span of days; the last twelve months where none is named.')
  @ZodResponse({ status: 200, type: FiguresDto })
  async view(@Query() query: FiguresQueryDto, @CurrentActor() actor: Actor) {
    return answer(await viewFigures(this.ports, actor, query));
  }
}
