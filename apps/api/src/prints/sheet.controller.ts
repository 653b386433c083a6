import { Controller, Get, Inject } from '@nestjs/common';
import { ApiOkResponse, ApiProduces } from '@nestjs/swagger';
import { printHandoverSheet, type Actor, type Printing } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { PRINTING } from '../tokens';
import { pdfFile } from './pdf-file';

@Controller('tickets')
export class SheetController {
  constructor(@Inject(PRINTING) private readonly printing: Printing) {}

  @Get(':id/sheet.pdf')
  @Permit('see-tickets')
  @ApiProduces('application/pdf')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async sheet(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return pdfFile(answer(await printHandoverSheet(this.printing, actor, id)));
  }
}
