import { Body, Controller, Get, HttpCode, Inject, Post, Put, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { changeRetention, eraseOwner as eraseOwnerSchema, personalData, retention } from '../../../../libs/contracts';
import {
  eraseOwner,
  personalDataOf,
  settleRetention,
  viewRetention,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class PersonalDataDto extends createZodDto(personalData) {}
class EraseOwnerDto extends createZodDto(eraseOwnerSchema) {}
class RetentionDto extends createZodDto(retention) {}
class ChangeRetentionDto extends createZodDto(changeRetention) {}
class RetentionQuery extends createZodDto(
  z.object({ years: z.coerce.number().int().min(1).max(50, { error: 'expected 1 to 50 years' }).optional() }),
) {}

@Controller()
@Says('What is kept of a person: handed over, erased, and for how long it stays.')
export class PersonalDataController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('owners/:id/personal-data')
  @Permit('manage-personal-data')
  @Says('Everything that is kept of one owner.')
  @ZodResponse({ status: 200, type: PersonalDataDto })
  async export(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await personalDataOf(this.ports, actor, id));
  }

  @Post('owners/:id/erase')
  @HttpCode(200)
  @Permit('manage-personal-data')
  @Says('Erases what is known of an owner; tickets, parts and verdicts stay.')
  @ZodResponse({ status: 200, type: PersonalDataDto })
  async erase(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { reason }: EraseOwnerDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await eraseOwner(this.ports, actor, { id, version, reason }));
  }

  @Get('retention')
  @Permit('manage-personal-data')
  @Says('After how many years an owner is forgotten, and who would be; also for years that are only asked about.')
  @ZodResponse({ status: 200, type: RetentionDto })
  view(@Query() { years }: RetentionQuery) {
    return viewRetention(this.ports, years);
  }

  @Put('retention')
  @Permit('manage-personal-data')
  @Says('Settles after how many years without a ticket an owner is forgotten.')
  @ZodResponse({ status: 200, type: RetentionDto })
  async settle(@IfMatch() version: number, @Body() { years }: ChangeRetentionDto, @CurrentActor() actor: Actor) {
    return answer(await settleRetention(this.ports, actor, { years, version }));
  }
}
