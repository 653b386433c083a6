import { Body, Controller, Get, HttpCode, Inject, Patch, Post, Query } from '@nestjs/common';
import { ZodResponse } from 'nestjs-zod';
import {
  countPart,
  listPulls,
  markPulled,
  receivePart,
  setShelfItem,
  stockOf,
  viewShelf,
  viewShelfItem,
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
import * as dto from './shelf-dtos';

@Controller('shelf')
@Says('What lies where at the own location, in pieces, and every movement of it.')
@Repeatable()
export class ShelfController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-shelf')
  @Says('The shelf by bin, page by page; a part is found by its number in any writing.')
  @ZodResponse({ status: 200, type: dto.ShelfPageDto })
  list(@Query() query: dto.ShelfQueryDto, @CurrentActor() actor: Actor) {
    return viewShelf(this.ports, actor, query);
  }

  @Get('items/:id')
  @Permit('see-shelf')
  @Says('One part on the shelf with its movements, who holds it, who waits for it, and what is on its way.')
  @ZodResponse({ status: 200, type: dto.ShelfItemDetailDto })
  async item(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await viewShelfItem(this.ports, actor, id));
  }

  @Patch('items/:id')
  @Permit('order-stock')
  @Says('Sets the bin, the reorder point, how many are ordered at once, and the supplier.')
  @ZodResponse({ status: 200, type: dto.ShelfItemDetailDto })
  async set(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.SetShelfItemDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await setShelfItem(this.ports, actor, { ...input, id, version }));
  }

  @Post('receive')
  @HttpCode(200)
  @Permit('move-stock')
  @Says('Puts bags or pieces on the shelf, counts them towards their order, and wakes tickets that wait.')
  @ZodResponse({ status: 200, type: dto.ShelfMovedDto })
  async receive(@Body() input: dto.ReceivePartDto, @CurrentActor() actor: Actor) {
    return answer(await receivePart(this.ports, actor, input));
  }

  @Get('stock')
  @Permit('see-shelf')
  @Says('What the shelf has of a part, by its number in any writing; to be seen before it is counted.')
  @ZodResponse({ status: 200, type: dto.StockViewDto })
  async stock(@Query() { partText }: dto.StockQueryDto, @CurrentActor() actor: Actor) {
    return answer(await stockOf(this.ports, actor, partText));
  }

  @Post('count')
  @HttpCode(200)
  @Permit('move-stock')
  @Says('Sets right how many pieces there are, with a reason.', {
    more: 'If-Match names the version of the stock as `GET /api/shelf/stock` gives it, so that nobody counts what was moved meanwhile.',
  })
  @ZodResponse({ status: 200, type: dto.ShelfMovedDto })
  async count(@IfMatch() version: number, @Body() input: dto.CountPartDto, @CurrentActor() actor: Actor) {
    return answer(await countPart(this.ports, actor, { ...input, version }));
  }

  @Get('pulls')
  @Permit('see-shelf')
  @Says('Parts on the shelves that published bulletins bar or end, with their bins; what is still to be done first.')
  @ZodResponse({ status: 200, type: dto.ShelfPullsDto })
  pulls(@CurrentActor() actor: Actor) {
    return listPulls(this.ports, actor);
  }

  @Get('pulls/bulletins/:id')
  @Permit('see-shelf')
  @Says('The same for one bulletin.')
  @ZodResponse({ status: 200, type: dto.ShelfPullsDto })
  pullsOf(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return listPulls(this.ports, actor, id);
  }

  @Post('pulls/:id')
  @HttpCode(200)
  @Permit('move-stock')
  @Says('Marks such a part as seen to on one shelf.')
  @ZodResponse({ status: 200, type: dto.ShelfPullsDto })
  async pulled(@RowIdParam('id') noticeId: number, @Body() input: dto.MarkPulledDto, @CurrentActor() actor: Actor) {
    return answer(await markPulled(this.ports, actor, { ...input, noticeId }));
  }
}
