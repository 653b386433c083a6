import { Body, Controller, Get, HttpCode, Inject, Param, Post, Put, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import {
  newEvidence,
  setAsideEvidence,
  settleNote as settleNoteSchema,
  setWarranty as setWarrantySchema,
  unitIdentity,
  unitTrail,
  unitView,
} from '../../../../libs/contracts';
import {
  addEvidence,
  identifyUnit,
  setAsideEvidence as setAside,
  settleNote,
  setWarranty,
  viewTrail,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class UnitIdentityDto extends createZodDto(unitIdentity) {}
class NewEvidenceDto extends createZodDto(newEvidence) {}
class SetAsideDto extends createZodDto(setAsideEvidence) {}
class SetWarrantyDto extends createZodDto(setWarrantySchema) {}
class SettleNoteDto extends createZodDto(settleNoteSchema) {}
class UnitTrailDto extends createZodDto(unitTrail) {}
class TrailQuery extends createZodDto(
  z.object({
    after: z
      .string()
      .regex(/^\d{1,18}\.\d{1,9}$/, { error: "expected the 'next' of the page before" })
      .optional(),
  }),
) {}
class UnitViewDto extends createZodDto(unitView) {}

@Controller('units')
@Says('Units: what they are, when they can have been built, and what was done about them.')
export class UnitsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get(':id/trail')
  @Permit('see-trail')
  @Says('Everything that was ever done about a unit, oldest first.')
  @ZodResponse({ status: 200, type: UnitTrailDto })
  async trail(@RowIdParam('id') unitId: number, @Query() { after }: TrailQuery, @CurrentActor() actor: Actor) {
    return answer(await viewTrail(this.ports, actor, { unitId, after: after ?? null }));
  }

  @Put(':id/identity')
  @Permit('identify-unit')
  @Says("Sets a unit's line, model, serial, options and plate.")
  @ZodResponse({ status: 200, type: UnitViewDto })
  async identify(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() identity: UnitIdentityDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await identifyUnit(this.ports, actor, { id, version, identity }));
  }

  @Post(':id/evidence')
  @HttpCode(200)
  @Permit('add-evidence')
  @Says('Adds evidence of when the unit was built.')
  @ZodResponse({ status: 200, type: UnitViewDto })
  async addEvidence(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { evidence }: NewEvidenceDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await addEvidence(this.ports, actor, { id, version, evidence }));
  }

  @Post(':id/evidence/:evidenceId/set-aside')
  @HttpCode(200)
  @Permit('set-aside-evidence')
  @Says('Sets evidence aside, with the reason.')
  @ZodResponse({ status: 200, type: UnitViewDto })
  async setAside(
    @RowIdParam('id') id: number,
    @Param('evidenceId') evidenceId: string,
    @IfMatch() version: number,
    @Body() { reason }: SetAsideDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await setAside(this.ports, actor, { id, version, evidenceId, reason }));
  }
  @Put(':id/warranty')
  @Permit('set-warranty')
  @Says('Writes down when the unit was bought and for how many months its maker stands for it.')
  @ZodResponse({ status: 200, type: UnitViewDto })
  async warranty(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { warranty }: SetWarrantyDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await setWarranty(this.ports, actor, { id, version, warranty }));
  }

  @Post(':id/notes/:noteId/settle')
  @HttpCode(200)
  @Permit('settle-notes')
  @Says('Settles a note that waited for the next visit, with what was done about it.')
  @ZodResponse({ status: 200, type: UnitViewDto })
  async settleNote(
    @RowIdParam('id') id: number,
    @RowIdParam('noteId') noteId: number,
    @IfMatch() version: number,
    @Body() { reason }: SettleNoteDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await settleNote(this.ports, actor, { id, version, noteId, reason }));
  }
}
