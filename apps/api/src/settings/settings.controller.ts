import { Body, Controller, Get, Inject, Patch } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { changedSettings, changeSettings as changeSettingsSchema, shopSettings } from '../../../../libs/contracts';
import { changeSettings, viewSettings, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class ShopSettingsDto extends createZodDto(shopSettings) {}
class ChangedSettingsDto extends createZodDto(changedSettings) {}
class ChangeSettingsDto extends createZodDto(changeSettingsSchema) {}

@Controller('settings')
@Says('What the shop has settled for itself, where it can change an answer.')
export class SettingsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('change-settings')
  @Says('The settings of the shop.')
  @ZodResponse({ status: 200, type: ShopSettingsDto })
  view() {
    return viewSettings(this.ports);
  }

  @Patch()
  @Permit('change-settings')
  @Says('Changes settings; what can change an answer starts a recheck of everything.')
  @ZodResponse({ status: 200, type: ChangedSettingsDto })
  async change(@IfMatch() version: number, @Body() input: ChangeSettingsDto, @CurrentActor() actor: Actor) {
    return answer(await changeSettings(this.ports, actor, { ...input, version }));
  }
}
