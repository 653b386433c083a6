import { Body, Controller, Get, Inject, Patch, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { line, owner, owners, unitRows } from '../../../../libs/contracts';
import { changeOwner, searchOwners, unitsOfOwner, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

const change = z.object({
  name: line(200).min(1, { error: 'expected a name' }).optional(),
  phone: line(50).optional(),
  email: line(200).optional(),
  address: line(500).optional(),
  consent: z.boolean().optional(),
});

class OwnersQuery extends createZodDto(z.object({ q: z.string().trim().max(100).default('') })) {}
class OwnersDto extends createZodDto(owners) {}
class OwnerDto extends createZodDto(owner) {}
class UnitRowsDto extends createZodDto(unitRows) {}
class ChangeOwnerDto extends createZodDto(change) {}

@Controller('owners')
@Says('The people whose units come in.')
export class OwnersController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-owners')
  @Says('Owners by name, telephone or e-mail.')
  @ZodResponse({ status: 200, type: OwnersDto })
  search(@Query() { q }: OwnersQuery, @CurrentActor() actor: Actor) {
    return searchOwners(this.ports, actor, q);
  }

  @Get(':id/units')
  @Permit('see-owners')
  @Says('The units of one owner.')
  @ZodResponse({ status: 200, type: UnitRowsDto })
  async units(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await unitsOfOwner(this.ports, actor, id));
  }

  @Patch(':id')
  @Permit('open-ticket')
  @Says("Changes an owner's name, telephone, addresses or consent.")
  @ZodResponse({ status: 200, type: OwnerDto })
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: ChangeOwnerDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await changeOwner(this.ports, actor, { ...input, id, version }));
  }
}
