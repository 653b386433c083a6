import { Body, Controller, Get, HttpCode, Inject, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  savedSerialScheme,
  saveSerialScheme as saveSchema,
  serialSchemeRows,
  triedSerial,
  trySerialScheme as trySchema,
} from '../../../../libs/contracts';
import {
  listSerialSchemes,
  saveSerialScheme,
  trySerialScheme,
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

class SerialSchemeRowsDto extends createZodDto(serialSchemeRows) {}
class SaveSerialSchemeDto extends createZodDto(saveSchema) {}
class SavedSerialSchemeDto extends createZodDto(savedSerialScheme) {}
class TrySerialSchemeDto extends createZodDto(trySchema) {}
class TriedSerialDto extends createZodDto(triedSerial) {}

@Controller('serial-schemes')
@Says('How serial numbers tell the build date.')
export class SerialSchemesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-shop-data')
  @Says('The serial schemes of the shop.')
  @ZodResponse({ status: 200, type: SerialSchemeRowsDto })
  list() {
    return listSerialSchemes(this.ports);
  }

  @Post()
  @Permit('edit-shop-data')
  @Says('Adds a serial scheme and works out the build dates it concerns anew.')
  @ZodResponse({ status: 201, type: SavedSerialSchemeDto })
  async add(@Body() { scheme }: SaveSerialSchemeDto, @CurrentActor() actor: Actor) {
    return answer(await saveSerialScheme(this.ports, actor, { scheme }));
  }

  @Put(':id')
  @Permit('edit-shop-data')
  @Says('Changes a serial scheme and works out the build dates it concerns anew.')
  @ZodResponse({ status: 200, type: SavedSerialSchemeDto })
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() { scheme }: SaveSerialSchemeDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await saveSerialScheme(this.ports, actor, { scheme, on: { id, version } }));
  }

  @Post('try')
  @HttpCode(200)
  @Permit('see-shop-data')
  @Says('Reads serial numbers by a scheme without keeping it.')
  @ZodResponse({ status: 200, type: TriedSerialDto })
  async try(@Body() input: TrySerialSchemeDto) {
    return answer(await trySerialScheme(this.ports, input));
  }
}
