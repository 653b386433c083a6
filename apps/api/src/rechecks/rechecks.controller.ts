import { Controller, Get, Inject, Post } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { rechecks, recheckView } from '../../../../libs/contracts';
import { listRechecks, orderRecheck, viewRecheck, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class RechecksDto extends createZodDto(rechecks) {}
class RecheckDto extends createZodDto(recheckView) {}

@Controller('rechecks')
@Says('Judging again what is fitted, after the rules have changed.')
export class RechecksController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-rechecks')
  @Says('The latest rechecks, newest first.')
  @ZodResponse({ status: 200, type: RechecksDto })
  async list() {
    return [...(await listRechecks(this.ports))];
  }

  @Get(':id')
  @Permit('see-rechecks')
  @Says('One recheck: how far it is and what it has changed.')
  @ZodResponse({ status: 200, type: RecheckDto })
  async view(@RowIdParam('id') id: number) {
    return answer(await viewRecheck(this.ports, id));
  }

  @Post()
  @Permit('order-recheck')
  @Says('Starts a recheck of everything.')
  @ZodResponse({ status: 201, type: RecheckDto })
  async order(@CurrentActor() actor: Actor) {
    return answer(await viewRecheck(this.ports, answer(await orderRecheck(this.ports, actor)).recheckId));
  }
}
