import { Body, Controller, Get, HttpCode, Inject, Patch, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import * as contracts from '../../../../libs/contracts';
import {
  changeBench,
  chooseMyBench,
  moveOnBench,
  viewBenchLists,
  viewMyBench,
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

class BenchListsDto extends createZodDto(contracts.benchLists) {}
class MoveOnBenchDto extends createZodDto(contracts.moveOnBench) {}
class ChangeBenchDto extends createZodDto(contracts.changeBench) {}
class MyBenchDto extends createZodDto(contracts.myBench) {}
class ChooseMyBenchDto extends createZodDto(contracts.chooseMyBench) {}

@Controller()
@Repeatable()
@Says('What lies on which bench, in which order, against how much a day there takes.')
export class BenchesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('bench-lists')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: BenchListsDto })
  @Says('Every bench of the location with its list and its load, and the open tickets on none.')
  lists(@CurrentActor() actor: Actor) {
    return viewBenchLists(this.ports, actor);
  }

  @Post('tickets/:id/bench')
  @HttpCode(200)
  @Permit('plan-benches')
  @ZodResponse({ status: 200, type: BenchListsDto })
  @Says('Moves a ticket on a list, to another bench or off all of them.', {
    more: 'A ticket that is not where it was seen any more is refused with 412 and the lists as they stand.',
  })
  async move(@RowIdParam('id') id: number, @Body() input: MoveOnBenchDto, @CurrentActor() actor: Actor) {
    return answer(await moveOnBench(this.ports, actor, { ...input, id }));
  }

  @Patch('benches/:id')
  @Permit('change-benches')
  @ZodResponse({ status: 200, type: BenchListsDto })
  @Says('Sets how many minutes of work a day at a bench takes.')
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: ChangeBenchDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await changeBench(this.ports, actor, { ...input, id, version }));
  }

  @Get('my-bench')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: MyBenchDto })
  @Says('The list of the bench one works at, each ticket with what its gate still asks for.')
  mine(@CurrentActor() actor: Actor) {
    return viewMyBench(this.ports, actor);
  }

  @Put('my-bench')
  @Permit('choose-my-bench')
  @ZodResponse({ status: 200, type: MyBenchDto })
  @Says('Says at which bench one works.')
  async choose(@Body() input: ChooseMyBenchDto, @CurrentActor() actor: Actor) {
    return answer(await chooseMyBench(this.ports, actor, input));
  }
}
