import { Controller, Get, Inject, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { scanned, scanQuery, unitVisit } from '../../../../libs/contracts';
import { readScan, viewVisit, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class ScanQueryDto extends createZodDto(scanQuery) {}
class ScannedDto extends createZodDto(scanned) {}
class UnitVisitDto extends createZodDto(unitVisit) {}

@Controller()
@Says('Where a scanned code leads, and a unit as it is greeted when it comes in again.')
export class ScanController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('scan')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: ScannedDto })
  @Says("Reads the tag of a ticket or a unit, or a part's bag: a plain number or a GS1 element string.")
  async read(@Query() { text }: ScanQueryDto, @CurrentActor() actor: Actor) {
    return { found: await readScan(this.ports, actor, text) };
  }

  @Get('units/:id')
  @Permit('see-tickets')
  @ZodResponse({ status: 200, type: UnitVisitDto })
  @Says('A unit with its history, what was noted for its next visit, an open callback, and the evidence so far.')
  async visit(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await viewVisit(this.ports, actor, id));
  }
}
