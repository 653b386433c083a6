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
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { PORTS } from '../tokens';

class BenchListsDto extends createZodDto(contracts.benchLists) {}
class MoveOnBenchDto extends createZodDto(contracts.moveOnBench) {}
class ChangeBenchDto extends createZodDto(contracts.changeBench) {}
class MyBenchDto extends createZodDto(contracts.myBench) {}
class ChooseMyBenchDto extends createZodDto(contracts.chooseMyBench) {}

@Controller()
@Repeatable()
export class BenchesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('bench-lists')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: BenchListsDto })
  lists(@CurrentActor() actor: Actor) {
    return viewBenchLists(this.ports, actor);
  }

  @Post('tickets/:id/bench')
  @HttpCode(200)
  @Permit('plan-benches')
  @ZodResponse({ status: 200, type: BenchListsDto })
  async move(@RowIdParam('id') id: number, @Body() input: MoveOnBenchDto, @CurrentActor() actor: Actor) {
    return answer(await moveOnBench(this.ports, actor, { ...input, id }));
  }

  @Patch('benches/:id')
  @Permit('change-benches')
  @ZodResponse({ status: 200, type: BenchListsDto })
  async change(@RowIdParam('id') id: number, @Body() input: ChangeBenchDto, @CurrentActor() actor: Actor) {
    return answer(await changeBench(this.ports, actor, { ...input, id }));
  }

  @Get('my-bench')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: MyBenchDto })
  mine(@CurrentActor() actor: Actor) {
    return viewMyBench(this.ports, actor);
  }

  @Put('my-bench')
  @Permit('choose-my-bench')
  @ZodResponse({ status: 200, type: MyBenchDto })
  async choose(@Body() input: ChooseMyBenchDto, @CurrentActor() actor: Actor) {
    return answer(await chooseMyBench(this.ports, actor, input));
  }
}
