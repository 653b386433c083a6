import { Body, Controller, Get, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  beginSecondFactor as beginSchema,
  me,
  recoveryCodes,
  secondFactorBegun,
  secondFactorCode,
  secondFactorOff,
  secondFactorView,
  signInCode,
  type Me,
} from '../../../../libs/contracts';
import {
  beginSecondFactor,
  personAtSecondStep,
  renewRecovery,
  signInWithCode,
  turnOffSecondFactor,
  turnOnSecondFactor,
  viewSecondFactor,
  type Outcome,
  type Passwords,
  type PersonRow,
  type Ports,
  type Seals,
  type SessionRules,
  type Try,
} from '../../../../libs/usecases';
import { CurrentPerson } from '../auth/current-actor';
import { ForOwnSignIn, OpenToAll } from '../auth/permit';
import { readCookie, readSessionCookie } from '../auth/session-cookie';
import { answer } from '../http/answer';
import { ProblemError } from '../http/problem-error';
import { Says } from '../open-api/says';
import { PASSWORDS, PORTS, SEALS, SESSION_RULES } from '../tokens';
import { SignInDoor } from './sign-in-door';

class SignInCodeDto extends createZodDto(signInCode) {}
class BeginDto extends createZodDto(beginSchema) {}
class CodeDto extends createZodDto(secondFactorCode) {}
class OffDto extends createZodDto(secondFactorOff) {}
class MeDto extends createZodDto(me) {}
class ViewDto extends createZodDto(secondFactorView) {}
class BegunDto extends createZodDto(secondFactorBegun) {}
class RecoveryCodesDto extends createZodDto(recoveryCodes) {}

@Controller('session')
@Says('A second factor beside the password: one-time codes from an app, and recovery codes.')
export class SecondFactorController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(PASSWORDS) private readonly passwords: Passwords,
    @Inject(SEALS) private readonly seals: Seals,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
    @Inject(SignInDoor) private readonly door: SignInDoor,
  ) {}

  @Post('code')
  @HttpCode(200)
  @OpenToAll()
  @Says('The second step of signing in, with a code.')
  @ZodResponse({ status: 200, type: MeDto })
  async signIn(
    @Body() { code }: SignInCodeDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const token = readCookie(request, 'step') ?? '';
    const person = await personAtSecondStep(this.ports, token);
    if (!person) throw new ProblemError(401, 'step-over', 'That took too long; begin with your password again.');
    const tried = await this.door.tryOf(request, 'code', person.id);
    const outcome = await signInWithCode({ ...this.all(), rules: this.rules }, person, { token, code });
    if (!outcome.ok) return this.door.refuse(request, 'wrong-code', outcome.refusal.detail, person.id);
    await this.door.right(tried);
    return this.door.open(request, reply, outcome.value, 'code');
  }

  @Get('second-factor')
  @ForOwnSignIn()
  @Says("How one's own second factor stands.")
  @ZodResponse({ status: 200, type: ViewDto })
  view(@CurrentPerson() person: PersonRow) {
    return viewSecondFactor(this.ports, person);
  }

  @Post('second-factor')
  @HttpCode(200)
  @ForOwnSignIn()
  @Says('Begins to set up a second factor; answers its secret once.')
  @ZodResponse({ status: 200, type: BegunDto })
  async begin(@Body() { password }: BeginDto, @CurrentPerson() person: PersonRow, @Req() request: FastifyRequest) {
    const tried = await this.door.tryOf(request, 'password', person.login);
    return this.settled([tried], await beginSecondFactor(this.all(), person, password));
  }

  @Post('second-factor/on')
  @HttpCode(200)
  @ForOwnSignIn()
  @Says('Turns the second factor on with a first code; answers recovery codes once.')
  @ZodResponse({ status: 200, type: RecoveryCodesDto })
  async turnOn(@Body() { code }: CodeDto, @CurrentPerson() person: PersonRow, @Req() request: FastifyRequest) {
    const tried = await this.door.tryOf(request, 'code', person.id);
    const token = readSessionCookie(request) ?? '';
    return this.settled([tried], await turnOnSecondFactor(this.all(), person, { code, token }));
  }

  @Post('second-factor/recovery-codes')
  @HttpCode(200)
  @ForOwnSignIn()
  @Says('New recovery codes; the ones before stop working.')
  @ZodResponse({ status: 200, type: RecoveryCodesDto })
  async recovery(@Body() { code }: CodeDto, @CurrentPerson() person: PersonRow, @Req() request: FastifyRequest) {
    const tried = await this.door.tryOf(request, 'code', person.id);
    return this.settled([tried], await renewRecovery(this.all(), person, code));
  }

  @Post('second-factor/off')
  @HttpCode(204)
  @ForOwnSignIn()
  @Says('Turns the second factor off.')
  async turnOff(
    @Body() input: OffDto,
    @CurrentPerson() person: PersonRow,
    @Req() request: FastifyRequest,
  ): Promise<void> {
    const tried = [
      await this.door.tryOf(request, 'password', person.login),
      await this.door.tryOf(request, 'code', person.id),
    ];
    const token = readSessionCookie(request) ?? '';
    await this.settled(tried, await turnOffSecondFactor(this.all(), person, { ...input, token }));
  }

  private all() {
    return { ...this.ports, passwords: this.passwords, seals: this.seals };
  }

  /** Only what was guessed wrong goes on counting. */
  private async settled<T>(tried: readonly Try[], outcome: Outcome<T>): Promise<T> {
    if (outcome.ok) for (const one of tried) await this.door.right(one);
    return answer(outcome);
  }
}
