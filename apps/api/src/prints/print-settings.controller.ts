import { Body, Controller, Get, Inject, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { printSettings } from '../../../../libs/contracts';
import { changePrintSettings, viewPrintSettings, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class PrintSettingsDto extends createZodDto(printSettings) {}

@Controller('settings/prints')
@Says('Who the shop is on paper.')
export class PrintSettingsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-catalogue')
  @Says('What stands at the head of printed papers.')
  @ZodResponse({ status: 200, type: PrintSettingsDto })
  view() {
    return viewPrintSettings(this.ports);
  }

  @Put()
  @Permit('change-settings')
  @Says('Changes what stands at the head of printed papers.')
  @ZodResponse({ status: 200, type: PrintSettingsDto })
  change(@Body() input: PrintSettingsDto, @CurrentActor() actor: Actor) {
    return changePrintSettings(this.ports, actor, input);
  }
}
