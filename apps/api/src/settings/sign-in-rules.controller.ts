import { Body, Controller, Get, Inject, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { settledSignInRules, signInRules } from '../../../../libs/contracts';
import { changeSignInRules, viewSignInRules, type Actor, type PersonRow, type Ports } from '../../../../libs/usecases';
import { CurrentActor, CurrentPerson } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class SignInRulesDto extends createZodDto(signInRules) {}
class SettledSignInRulesDto extends createZodDto(settledSignInRules) {}

@Controller('settings/sign-in')
@Says('What the shop asks of a sign-in.')
export class SignInRulesController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('manage-people')
  @Says('What the shop asks of a sign-in.')
  @ZodResponse({ status: 200, type: SettledSignInRulesDto })
  view() {
    return viewSignInRules(this.ports);
  }

  @Put()
  @Permit('manage-people')
  @Says('Changes what the shop asks of a sign-in.')
  @ZodResponse({ status: 200, type: SettledSignInRulesDto })
  async change(
    @IfMatch() version: number,
    @Body() input: SignInRulesDto,
    @CurrentActor() actor: Actor,
    @CurrentPerson() person: PersonRow,
  ) {
    return answer(await changeSignInRules(this.ports, actor, person, { ...input, version }));
  }
}
