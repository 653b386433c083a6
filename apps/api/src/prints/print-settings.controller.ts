import { Body, Controller, Get, Inject, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import type { Config } from '../../../../libs/config';
import { mailSetUp, printSettings, settledPrints } from '../../../../libs/contracts';
import { changePrintSettings, viewPrintSettings, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Says } from '../open-api/says';
import { CONFIG, PORTS } from '../tokens';

class PrintSettingsDto extends createZodDto(printSettings) {}
class SettledPrintsDto extends createZodDto(settledPrints) {}
class MailSetUpDto extends createZodDto(mailSetUp) {}

@Controller('settings')
@Says('Who the shop is on paper, on which paper, and whether e-mails can be sent.')
export class PrintSettingsController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

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

  @Get('mail')
  @Permit('work-callbacks')
  @Says('Whether e-mails can be sent, through which server and from whom; the password is told to nobody.')
  @ZodResponse({ status: 200, type: MailSetUpDto })
  mail() {
    const { mail } = this.config;
    return { server: mail ? new URL(mail.url).host : null, from: mail?.from ?? null };
  }
}
