import { Body, Controller, Get, Inject, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { printSettings, settledPrints } from '../../../../libs/contracts';
import { changePrintSettings, viewPrintSettings, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class PrintSettingsDto extends createZodDto(printSettings) {}
class SettledPrintsDto extends createZodDto(settledPrints) {}

@Controller('settings')
@Says('Who the shop is on paper, and on which paper.')
export class PrintSettingsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('prints')
  @Permit('see-catalogue')
  @Says('How prints look, and in whose manner days and numbers are written.')
  @ZodResponse({ status: 200, type: SettledPrintsDto })
  view() {
    return viewPrintSettings(this.ports);
  }

  @Put('prints')
  @Permit('change-settings')
  @Says('Changes how prints look; nothing is judged again.')
  @ZodResponse({ status: 200, type: SettledPrintsDto })
  async change(@IfMatch() version: number, @Body() input: PrintSettingsDto, @CurrentActor() actor: Actor) {
    return answer(await changePrintSettings(this.ports, actor, { ...input, version }));
  }
}
