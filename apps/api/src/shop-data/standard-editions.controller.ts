import { Body, Controller, Get, Inject, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  savedStandardEdition,
  saveStandardEdition as saveSchema,
  standardEditionRows,
} from '../../../../libs/contracts';
import { listStandardEditions, saveStandardEdition, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class StandardEditionRowsDto extends createZodDto(standardEditionRows) {}
class SaveStandardEditionDto extends createZodDto(saveSchema) {}
class SavedStandardEditionDto extends createZodDto(savedStandardEdition) {}

@Controller('standard-editions')
@Says('Which edition of a standard was in use from when; marks on a plate date a unit by it.')
export class StandardEditionsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-shop-data')
  @Says('The editions of standards the shop knows.')
  @ZodResponse({ status: 200, type: StandardEditionRowsDto })
  list() {
    return listStandardEditions(this.ports);
  }

  @Post()
  @Permit('edit-shop-data')
  @Says('Adds an edition of a standard.')
  @ZodResponse({ status: 201, type: SavedStandardEditionDto })
  async add(@Body() { edition }: SaveStandardEditionDto, @CurrentActor() actor: Actor) {
    return answer(await saveStandardEdition(this.ports, actor, { edition }));
  }

  @Put(':id')
  @Permit('edit-shop-data')
  @Says('Changes an edition of a standard.')
  @ZodResponse({ status: 200, type: SavedStandardEditionDto })
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { edition }: SaveStandardEditionDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await saveStandardEdition(this.ports, actor, { edition, on: { id, version } }));
  }
}
