import { Body, Controller, Get, Header, HttpCode, Inject, Post, Put, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { bookkeepingQuery, moneySettings, ticketView } from '../../../../libs/contracts';
import {
  bookkeepingRows,
  changeMoney,
  viewMoney,
  writeEstimate,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { PORTS } from '../tokens';
import { csvOf } from './csv';

class TicketViewDto extends createZodDto(ticketView) {}
class MoneySettingsDto extends createZodDto(moneySettings) {}
class BookkeepingQueryDto extends createZodDto(bookkeepingQuery) {}

@Controller()
@Repeatable()
export class EstimatesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Post('tickets/:id/estimates')
  @HttpCode(200)
  @Permit('write-estimates')
  @ZodResponse({ status: 200, type: TicketViewDto })
  async write(@RowIdParam('id') id: number, @IfMatch() version: number, @CurrentActor() actor: Actor) {
    return answer(await writeEstimate(this.ports, actor, { id, version }));
  }

  @Get('settings/money')
  @Permit('change-settings')
  @ZodResponse({ status: 200, type: MoneySettingsDto })
  money() {
    return viewMoney(this.ports);
  }

  @Put('settings/money')
  @Permit('change-settings')
  @ZodResponse({ status: 200, type: MoneySettingsDto })
  changeMoney(@Body() input: MoneySettingsDto, @CurrentActor() actor: Actor) {
    return changeMoney(this.ports, actor, input);
  }

  @Get('bookkeeping')
  @Permit('export-bookkeeping')
  @Header('content-type', 'text/csv; charset=utf-8')
  @Header('content-disposition', 'attachment; filename="bookkeeping.csv"')
  async bookkeeping(@Query() span: BookkeepingQueryDto, @CurrentActor() actor: Actor) {
    return csvOf(await bookkeepingRows(this.ports, actor, span));
  }
}
