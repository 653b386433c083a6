import { Body, Controller, Get, Header, HttpCode, Inject, Post } from '@nestjs/common';
import { ZodResponse } from 'nestjs-zod';
import { cancelOrder, placeOrders, toOrderCsv, viewToOrder, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';
import * as dto from './shelf-dtos';

@Controller('shelf/orders')
@Says('What to order by supplier, and what is on its way. The order itself is placed by a person.')
@Repeatable()
export class ShelfOrdersController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-shelf')
  @Says('What has fallen to its reorder point or is waited for, and open orders.')
  @ZodResponse({ status: 200, type: dto.OrderListDto })
  list(@CurrentActor() actor: Actor) {
    return viewToOrder(this.ports, actor);
  }

  @Get('list.csv')
  @Permit('see-shelf')
  @Says('The list of what to order as CSV.', { answers: ['text/csv'] })
  @Header('content-type', 'text/csv; charset=utf-8')
  @Header('content-disposition', 'attachment; filename="to-order.csv"')
  async csv(@CurrentActor() actor: Actor) {
    return toOrderCsv(await viewToOrder(this.ports, actor));
  }

  @Post()
  @HttpCode(200)
  @Permit('order-stock')
  @Says('Keeps what was ordered and when it is expected.')
  @ZodResponse({ status: 200, type: dto.OrderListDto })
  async place(@Body() input: dto.PlaceOrdersDto, @CurrentActor() actor: Actor) {
    return answer(await placeOrders(this.ports, actor, input));
  }

  @Post(':id/cancel')
  @HttpCode(200)
  @Permit('order-stock')
  @Says('An order that will not come.')
  @ZodResponse({ status: 200, type: dto.OrderListDto })
  async cancel(@RowIdParam('id') id: number, @IfMatch() version: number, @CurrentActor() actor: Actor) {
    return answer(await cancelOrder(this.ports, actor, { id, version }));
  }
}
