import { Body, Controller, Get, HttpCode, Inject, Post, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { board, boardQuery, lookUpAnswer, lookUpRequest, searchHits } from '../../../../libs/contracts';
import { lookUp, searchTickets, viewBoard, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class BoardQuery extends createZodDto(boardQuery) {}
class BoardDto extends createZodDto(board) {}
class SearchQuery extends createZodDto(z.object({ q: z.string().trim().max(100).default('') })) {}
class SearchHitsDto extends createZodDto(searchHits) {}
class LookUpDto extends createZodDto(lookUpRequest) {}
class LookUpAnswerDto extends createZodDto(lookUpAnswer) {}

@Controller()
@Says('The board of the shop, search, and the answer for a walk-in.')
export class BoardController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('board')
  @Permit('see-tickets')
  @Says('The open tickets of the board, by stage.')
  @ZodResponse({ status: 200, type: BoardDto })
  board(@Query() { flagged, ...filter }: BoardQuery, @CurrentActor() actor: Actor) {
    return viewBoard(this.ports, actor, { ...filter, flagged: flagged === 'yes' });
  }

  @Get('search')
  @Permit('see-tickets')
  @Says('Tickets by number, serial, owner or telephone.')
  @ZodResponse({ status: 200, type: SearchHitsDto })
  search(@Query() { q }: SearchQuery, @CurrentActor() actor: Actor) {
    return searchTickets(this.ports, actor, q);
  }

  @Post('look-up')
  @HttpCode(200)
  @Permit('look-up')
  @Says('Which part is right at each position, for a unit that has no ticket.')
  @ZodResponse({ status: 200, type: LookUpAnswerDto })
  async lookUp(@Body() request: LookUpDto) {
    return answer(await lookUp(this.ports, request));
  }
}
