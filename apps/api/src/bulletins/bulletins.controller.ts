import { Body, Controller, Get, HttpCode, Inject, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  bulletinDetail,
  bulletinRows,
  publishBulletinInput,
  published,
  saveBulletin as saveBulletinSchema,
  whatIf as whatIfSchema,
  withdrawBulletin as withdrawBulletinSchema,
} from '../../../../libs/contracts';
import {
  changeBulletin,
  listBulletins,
  publishBulletin,
  saveBulletin,
  shown,
  showPublished,
  viewBulletin,
  whatIf,
  withdrawBulletin,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class BulletinRowsDto extends createZodDto(bulletinRows) {}
class BulletinDetailDto extends createZodDto(bulletinDetail) {}
class SaveBulletinDto extends createZodDto(saveBulletinSchema) {}
class WithdrawBulletinDto extends createZodDto(withdrawBulletinSchema) {}
class WhatIfDto extends createZodDto(whatIfSchema) {}
class PublishBulletinDto extends createZodDto(publishBulletinInput) {}
class PublishedDto extends createZodDto(published) {}

@Controller('bulletins')
@Says('Papers that change what is right: drafts, what they would do, publishing and withdrawing them.')
@Repeatable()
export class BulletinsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-bulletins')
  @Says('Every paper of the shop, newest first.')
  @ZodResponse({ status: 200, type: BulletinRowsDto })
  async list() {
    return [...(await listBulletins(this.ports))];
  }

  @Get(':id')
  @Permit('see-bulletins')
  @Says('One paper with its rules, and how its recheck stands.')
  @ZodResponse({ status: 200, type: BulletinDetailDto })
  async view(@RowIdParam('id') id: number) {
    return answer(await viewBulletin(this.ports, id));
  }

  @Post()
  @Permit('edit-bulletins')
  @Says('Keeps a new bulletin as a draft.')
  @ZodResponse({ status: 201, type: BulletinDetailDto })
  async save(@Body() input: SaveBulletinDto, @CurrentActor() actor: Actor) {
    return answer(await shown(await saveBulletin(this.ports, actor, input), (id) => viewBulletin(this.ports, id)));
  }

  @Put(':id')
  @Permit('edit-bulletins')
  @Says('Changes a draft.')
  @ZodResponse({ status: 200, type: BulletinDetailDto })
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: SaveBulletinDto,
    @CurrentActor() actor: Actor,
  ) {
    const saved = await changeBulletin(this.ports, actor, { ...input, id, version });
    return answer(await shown(saved, () => viewBulletin(this.ports, id)));
  }

  @Post(':id/what-if')
  @HttpCode(200)
  @Permit('edit-bulletins')
  @Says('What publishing the draft would change, worked out without changing it.')
  @ZodResponse({ status: 200, type: WhatIfDto })
  async whatIf(@RowIdParam('id') id: number) {
    return answer(await whatIf(this.ports, id));
  }

  @Post(':id/publish')
  @HttpCode(200)
  @Permit('publish-bulletins')
  @Says('Puts a draft in force and starts its recheck.')
  @ZodResponse({ status: 200, type: PublishedDto })
  async publish(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { whatIfRevision }: PublishBulletinDto,
    @CurrentActor() actor: Actor,
  ) {
    const outcome = await publishBulletin(this.ports, actor, { id, version, whatIfRevision });
    return answer(await showPublished(this.ports, id, outcome));
  }

  @Post(':id/withdraw')
  @HttpCode(200)
  @Permit('withdraw-bulletins')
  @Says('Takes a published bulletin back and starts its recheck.')
  @ZodResponse({ status: 200, type: PublishedDto })
  async withdraw(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { reason }: WithdrawBulletinDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(
      await showPublished(this.ports, id, await withdrawBulletin(this.ports, actor, { id, version, reason })),
    );
  }
}
