import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Patch, Post, Put, Query } from '@nestjs/common';
import { ZodResponse } from 'nestjs-zod';
import {
  authorise,
  cancelTicket,
  changeTag,
  endWait,
  explainPlace,
  holdTicket,
  moveStage,
  openTicket,
  pickPart,
  recordPlaces,
  returnPart,
  setLabour,
  takeSpareBack,
  tellPart,
  tickSafety,
  viewTicket,
  waitForPart,
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
import * as dto from './ticket-dtos';

@Controller('tickets')
@Says("A unit's stay in the shop, from intake to handover.")
@Repeatable()
export class TicketsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Post()
  @HttpCode(201)
  @Permit('open-ticket')
  @Says('Opens a ticket for a unit that came in.')
  @ZodResponse({ status: 201, type: dto.TicketViewDto })
  async open(@Body() input: dto.OpenTicketDto, @CurrentActor() actor: Actor) {
    return answer(await openTicket(this.ports, actor, input));
  }

  @Get(':id')
  @Permit('see-tickets')
  @Says('One ticket with its unit, places, flags and what its stage still needs.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async view(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await viewTicket(this.ports, actor, id));
  }

  @Patch(':id')
  @Permit('change-tag')
  @Says('Changes what the tag says: complaint, bench, promised day.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async changeTag(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.ChangeTagDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await changeTag(this.ports, actor, { ...input, id, version }));
  }

  @Put(':id/places')
  @Permit('record-places')
  @Says('Records what is fitted at places, and judges it.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async recordPlaces(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.RecordPlacesDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await recordPlaces(this.ports, actor, { ...input, id, version }));
  }

  @Get(':id/places/:position/:place/explain')
  @Permit('see-tickets')
  @Says('Why the verdict on one place is what it is.')
  @ZodResponse({ status: 200, type: dto.PlaceExplanationDto })
  async explain(
    @RowIdParam('id') id: number,
    @Param('position') position: string,
    @RowIdParam('place') place: number,
    @Query() { side }: dto.ExplainQueryDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await explainPlace(this.ports, actor, { id, position, place, side }));
  }

  @Post(':id/tell')
  @HttpCode(200)
  @Permit('record-places')
  @Says('Which part a set of marks and measures can be.')
  @ZodResponse({ status: 200, type: dto.TellAnswerDto })
  async tell(@RowIdParam('id') id: number, @Body() input: dto.TellRequestDto, @CurrentActor() actor: Actor) {
    return answer(await tellPart(this.ports, actor, { ...input, id }));
  }

  @Post(':id/picks')
  @HttpCode(200)
  @Permit('pick-parts')
  @Says('Picks a part for a place.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async pickPart(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.PickPartDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await pickPart(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/picks/:pickId/return')
  @HttpCode(200)
  @Permit('pick-parts')
  @Says('Puts a picked part back.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async returnPart(
    @RowIdParam('id') id: number,
    @RowIdParam('pickId') pickId: number,
    @IfMatch() version: number,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await returnPart(this.ports, actor, { id, version, pickId }));
  }

  @Post(':id/waits')
  @HttpCode(200)
  @Permit('pick-parts')
  @Says('The ticket waits for a part and wakes when it comes in.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async waitForPart(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.WaitForPartDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await waitForPart(this.ports, actor, { ...input, id, version }));
  }

  @Delete(':id/waits/:waitId')
  @Permit('pick-parts')
  @Says('The ticket waits no longer.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async endWait(
    @RowIdParam('id') id: number,
    @RowIdParam('waitId') waitId: number,
    @IfMatch() version: number,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await endWait(this.ports, actor, { id, version, waitId }));
  }

  @Post(':id/spares/:pickId/take-back')
  @HttpCode(200)
  @Permit('pick-parts')
  @Says('The owner hands back a spare that an earlier ticket gave along.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async takeSpareBack(
    @RowIdParam('id') id: number,
    @RowIdParam('pickId') pickId: number,
    @IfMatch() version: number,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await takeSpareBack(this.ports, actor, { id, version, pickId }));
  }

  @Put(':id/labour')
  @Permit('set-labour')
  @Says('Sets the labour lines of the ticket.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async setLabour(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.SetLabourDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await setLabour(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/authorisation')
  @HttpCode(200)
  @Permit('authorise-work')
  @Says("Records the owner's word to go ahead, or not.")
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async authorise(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.AuthoriseDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await authorise(this.ports, actor, { ...input, id, version }));
  }

  @Put(':id/safety')
  @Permit('tick-safety')
  @Says('Ticks points of the safety list.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async tickSafety(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.TickSafetyDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await tickSafety(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/stage')
  @HttpCode(200)
  @Permit('move-ticket')
  @Says('Moves the ticket to another stage, if its gate is open.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async moveStage(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.MoveStageDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await moveStage(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/hold')
  @HttpCode(200)
  @Permit('hold-ticket')
  @Says('Puts the ticket on hold or takes it off.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async hold(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.HoldTicketDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await holdTicket(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/cancel')
  @HttpCode(200)
  @Permit('cancel-ticket')
  @Says('Ends the ticket without a repair.')
  @ZodResponse({ status: 200, type: dto.TicketViewDto })
  async cancel(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: dto.CancelTicketDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await cancelTicket(this.ports, actor, { ...input, id, version }));
  }
}
