import { Controller, Get, Inject } from '@nestjs/common';
import { printHandoverSheet, type Actor, type Pictures, type Printing } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PICTURES, PRINTING } from '../tokens';
import { pdfFile } from './pdf-file';

@Controller('tickets')
@Says('What is printed of a ticket.')
export class SheetController {
  constructor(
    @Inject(PRINTING) private readonly printing: Printing,
    @Inject(PICTURES) private readonly pictures: Pictures,
  ) {}

  @Get(':id/sheet.pdf')
  @Permit('see-tickets')
  @Says('The handover sheet as a PDF.', { answers: ['application/pdf'] })
  async sheet(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    const ports = { ...this.printing, pictures: this.pictures };
    return pdfFile(answer(await printHandoverSheet(ports, actor, id)));
  }
}
