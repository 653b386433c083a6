import { Body, Controller, Delete, Get, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import type { Config } from '../../../../libs/config';
import { changePassword, demoPeople, me, signIn, useLink as useLinkSchema, type Me } from '../../../../libs/contracts';
import {
  changeOwnPassword,
  listDemoPeople,
  meOf,
  signIn as signInPerson,
  signOut,
  signOutEverywhere,
  useLink,
  type Passwords,
  type PersonRow,
  type Ports,
  type SessionRules,
} from '../../../../libs/usecases';
import { CurrentPerson } from '../auth/current-actor';
import { answer } from '../http/answer';
import { ForSignedIn, OpenToAll } from '../auth/permit';
import { clearSessionCookie, readSessionCookie, setSessionCookie } from '../auth/session-cookie';
import { SignInBrake } from '../auth/sign-in-brake';
import { ProblemError } from '../http/problem-error';
import { CONFIG, PASSWORDS, PORTS, SESSION_RULES } from '../tokens';

class SignInDto extends createZodDto(signIn) {}
class UseLinkDto extends createZodDto(useLinkSchema) {}
class ChangePasswordDto extends createZodDto(changePassword) {}
class MeDto extends createZodDto(me) {}
class DemoPeopleDto extends createZodDto(demoPeople) {}

@Controller('session')
export class SessionController {
  private readonly brake: SignInBrake;

  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(PASSWORDS) private readonly passwords: Passwords,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
  ) {
    this.brake = new SignInBrake(() => ports.clock.now());
  }

  @Post()
  @HttpCode(200)
  @OpenToAll()
  @ZodResponse({ status: 200, type: MeDto })
  async signIn(
    @Body() input: SignInDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const account = input.login.trim().toLowerCase();
    const wait = this.brake.waitFor(account, request.ip);
    if (wait > 0) throw tooManyTries(wait);
    const outcome = await signInPerson({ ...this.ports, passwords: this.passwords, rules: this.rules }, input);
    if (!outcome.ok) this.brake.wrong(account);
    const { token, me: person } = outcome.ok ? outcome.value : refuseSignIn(outcome.refusal.detail);
    this.brake.right(account);
    setSessionCookie(request, reply, token);
    return person;
  }

  @Get()
  @ForSignedIn()
  @ZodResponse({ status: 200, type: MeDto })
  whoAmI(@CurrentPerson() person: PersonRow): Me {
    return meOf(person);
  }

  @Delete()
  @HttpCode(204)
  @OpenToAll()
  async signOut(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<void> {
    const token = readSessionCookie(request);
    if (token) await signOut(this.ports, token);
    clearSessionCookie(request, reply);
  }

  @Post('link')
  @HttpCode(200)
  @OpenToAll()
  @ZodResponse({ status: 200, type: MeDto })
  async useLink(
    @Body() input: UseLinkDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const signedIn = answer(await useLink({ ...this.ports, passwords: this.passwords, rules: this.rules }, input));
    setSessionCookie(request, reply, signedIn.token);
    return signedIn.me;
  }

  @Post('password')
  @HttpCode(204)
  @ForSignedIn()
  async changePassword(
    @Body() input: ChangePasswordDto,
    @CurrentPerson() person: PersonRow,
    @Req() request: FastifyRequest,
  ): Promise<void> {
    const wait = this.brake.waitFor(person.login, request.ip);
    if (wait > 0) throw tooManyTries(wait);
    const token = readSessionCookie(request) ?? '';
    const outcome = await changeOwnPassword({ ...this.ports, passwords: this.passwords }, person, { ...input, token });
    if (!outcome.ok && outcome.refusal.field === 'current') this.brake.wrong(person.login);
    answer(outcome);
  }

  @Delete('all')
  @HttpCode(204)
  @ForSignedIn()
  async signOutEverywhere(
    @CurrentPerson() person: PersonRow,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await signOutEverywhere(this.ports, person.id);
    clearSessionCookie(request, reply);
  }

  @Get('demo')
  @OpenToAll()
  @ZodResponse({ status: 200, type: DemoPeopleDto })
  demoPeople() {
    return this.config.demo ? listDemoPeople(this.ports) : [];
  }
}

function refuseSignIn(detail: string): never {
  throw new ProblemError(401, 'not-signed-in', detail);
}

function tooManyTries(wait: number): ProblemError {
  const seconds = Math.ceil(wait / 1_000);
  return new ProblemError(
    429,
    'too-many-tries',
    `Too many tries; try again in ${seconds} s.`,
    {},
    {
      'retry-after': String(seconds),
    },
  );
}
