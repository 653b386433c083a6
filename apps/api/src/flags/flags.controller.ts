import { Body, Controller, Get, HttpCode, Inject, Post, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { decideFlag as decision, flags, flagView } from '../../../../libs/contracts';
import { decideFlag, listFlags, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class FlagsQuery extends createZodDto(z.object({ state: z.enum(['open', 'decided']).default('open') })) {}
class FlagsDto extends createZodDto(flags) {}
class FlagDto extends createZodDto(flagView) {}
class DecideFlagDto extends createZodDto(decision) {}

@Controller('flags')
@Says("Verdicts on parts in units that are in the shop, for a manager's decision.")
export class FlagsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-flags')
  @Says('Flagged installs, open or decided.')
  @ZodResponse({ status: 200, type: FlagsDto })
  list(@Query() { state }: FlagsQuery, @CurrentActor() actor: Actor) {
    return listFlags(this.ports, actor, state);
  }

  @Post(':id/decide')
  @HttpCode(200)
  @Permit('decide-flags')
  @Says("Records a manager's decision on a flag.")
  @ZodResponse({ status: 200, type: FlagDto })
  async decide(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: DecideFlagDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await decideFlag(this.ports, actor, { ...input, id, version }));
  }
}
