import { Body, Controller, Get, Header, HttpCode, Inject, Post, Put, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { bookkeepingQuery, moneySettings, settledMoney, ticketView } from '../../../../libs/contracts';
import {
  bookkeepingRows,
  changeMoney,
  viewMoney,
  writeEstimate,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { csvTable } from '../../../../libs/sheets';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class TicketViewDto extends createZodDto(ticketView) {}
class MoneySettingsDto extends createZodDto(moneySettings) {}
class SettledMoneyDto extends createZodDto(settledMoney) {}
class BookkeepingQueryDto extends createZodDto(bookkeepingQuery) {}

@Controller()
@Repeatable()
@Says('Estimates with their revisions, the money settings they rest on, and a table for the books.')
export class EstimatesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Post('tickets/:id/estimates')
  @HttpCode(200)
  @Permit('write-estimates')
  @ZodResponse({ status: 200, type: TicketViewDto })
  @Says('Writes the estimate down as it stands, as its next revision.')
  async write(@RowIdParam('id') id: number, @IfMatch() version: number, @CurrentActor() actor: Actor) {
    return answer(await writeEstimate(this.ports, actor, { id, version }));
  }

  @Get('settings/money')
  @Permit('change-settings')
  @ZodResponse({ status: 200, type: SettledMoneyDto })
  @Says('Currency, tax, and what an hour is asked for.')
  money() {
    return viewMoney(this.ports);
  }

  @Put('settings/money')
  @Permit('change-settings')
  @ZodResponse({ status: 200, type: SettledMoneyDto })
  @Says('Settles currency, tax and hour; estimates written down before keep theirs.')
  async changeMoney(@IfMatch() version: number, @Body() input: MoneySettingsDto, @CurrentActor() actor: Actor) {
    return answer(await changeMoney(this.ports, actor, { ...input, version }));
  }

  @Get('bookkeeping')
  @Permit('export-bookkeeping')
  @Header('content-type', 'text/csv; charset=utf-8')
  @Header('content-disposition', 'attachment; filename="bookkeeping.csv"')
  @Says('The last estimate of every ticket handed over in a span of days, line by line.', { answers: ['text/csv'] })
  async bookkeeping(@Query() span: BookkeepingQueryDto, @CurrentActor() actor: Actor) {
    return csvTable(await bookkeepingRows(this.ports, actor, span));
  }
}
