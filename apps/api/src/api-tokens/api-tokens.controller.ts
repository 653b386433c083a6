import { Body, Controller, Delete, Get, HttpCode, Inject, Post } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { apiTokenList, apiTokenMade, apiTokenView, newApiToken } from '../../../../libs/contracts';
import { listTokens, makeToken, revokeToken, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class ApiTokenListDto extends createZodDto(apiTokenList) {}
class ApiTokenDto extends createZodDto(apiTokenView) {}
class NewApiTokenDto extends createZodDto(newApiToken) {}
class ApiTokenMadeDto extends createZodDto(apiTokenMade) {}

@Controller('tokens')
@Says('Tokens with which other programs ask in the name of the person who made them.')
export class ApiTokensController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('manage-tokens')
  @Says("The tokens there are: a manager's own, an administrator's all.")
  @ZodResponse({ status: 200, type: ApiTokenListDto })
  list(@CurrentActor() actor: Actor) {
    return listTokens(this.ports, actor);
  }

  @Post()
  @HttpCode(201)
  @Permit('manage-tokens')
  @Says('Makes a token, which is answered this once and kept nowhere.')
  @ZodResponse({ status: 201, type: ApiTokenMadeDto })
  async make(@Body() input: NewApiTokenDto, @CurrentActor() actor: Actor) {
    return answer(await makeToken(this.ports, actor, input));
  }

  @Delete(':id')
  @HttpCode(200)
  @Permit('manage-tokens')
  @Says('Revokes a token: from the next request on it opens nothing.')
  @ZodResponse({ status: 200, type: ApiTokenDto })
  async revoke(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await revokeToken(this.ports, actor, id));
  }
}
