import { Body, Controller, Delete, Get, HttpCode, Inject, Post, Put, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import type { Config } from '../../../../libs/config';
import {
  changePassword,
  demoPeople,
  me,
  ownIntakeDraft,
  ownReading,
  signIn,
  useLink as useLinkSchema,
  type Me,
  type OwnIntakeDraft,
} from '../../../../libs/contracts';
import {
  changeOwnPassword,
  chooseReading,
  keepDraft,
  listDemoPeople,
  meOf,
  ownDraft,
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
import { ForOwnSignIn, ForSignedIn, OpenToAll } from '../auth/permit';
import { clearCookie, readSessionCookie } from '../auth/session-cookie';
import { Says } from '../open-api/says';
import { CONFIG, PASSWORDS, PORTS, SESSION_RULES } from '../tokens';
import { SignInDoor } from './sign-in-door';

class SignInDto extends createZodDto(signIn) {}
class UseLinkDto extends createZodDto(useLinkSchema) {}
class ChangePasswordDto extends createZodDto(changePassword) {}
class OwnReadingDto extends createZodDto(ownReading) {}
class OwnDraftDto extends createZodDto(ownIntakeDraft) {}
class MeDto extends createZodDto(me) {}
class DemoPeopleDto extends createZodDto(demoPeople) {}

@Controller('session')
@Says("Signing in and out, and one's own password.")
export class SessionController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(PASSWORDS) private readonly passwords: Passwords,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
    @Inject(SignInDoor) private readonly door: SignInDoor,
  ) {}

  @Post()
  @HttpCode(200)
  @OpenToAll()
  @Says('Signs a person in; the answer sets the session cookie.')
  @ZodResponse({ status: 200, type: MeDto })
  async signIn(
    @Body() input: SignInDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const tried = await this.door.tryOf(request, 'password', input.login.trim().toLowerCase());
    const outcome = await signInPerson({ ...this.ports, passwords: this.passwords, rules: this.rules }, input);
    if (!outcome.ok) return this.door.refuse(request, 'wrong-password', outcome.refusal.detail);
    await this.door.right(tried);
    return this.door.open(request, reply, outcome.value, 'password');
  }

  @Get()
  @ForOwnSignIn()
  @Says('Who is signed in, and what that person may do.')
  @ZodResponse({ status: 200, type: MeDto })
  whoAmI(@CurrentPerson() person: PersonRow): Promise<Me> {
    return meOf(this.ports, person);
  }

  @Put('reading')
  @ForOwnSignIn()
  @Says('Chooses how the page writes days, numbers, torques and lengths for the person; null as the shop does.')
  @ZodResponse({ status: 200, type: MeDto })
  read(@Body() input: OwnReadingDto, @CurrentPerson() person: PersonRow): Promise<Me> {
    return chooseReading(this.ports, person, input.reading);
  }

  @Get('draft')
  @ForSignedIn()
  @Says('What the person has begun to type at the intake; null where nothing, or nothing for half a day.')
  @ZodResponse({ status: 200, type: OwnDraftDto })
  draft(@CurrentPerson() person: PersonRow): Promise<OwnIntakeDraft> {
    return ownDraft(this.ports, person.id);
  }

  @Put('draft')
  @HttpCode(204)
  @ForSignedIn()
  @Says(
    'Keeps what the person has begun to type at the intake until the ticket is open or the person signs out; null forgets it.',
  )
  keepDraft(@Body() { draft }: OwnDraftDto, @CurrentPerson() person: PersonRow): Promise<void> {
    return keepDraft(this.ports, person.id, draft);
  }

  @Delete()
  @HttpCode(204)
  @OpenToAll()
  @Says('Ends the session.')
  async signOut(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<void> {
    const token = readSessionCookie(request);
    if (token) await signOut(this.ports, token);
    clearCookie(request, reply, 'session');
  }

  @Post('link')
  @HttpCode(200)
  @OpenToAll()
  @Says('Sets a password by a one-time link and signs in.')
  @ZodResponse({ status: 200, type: MeDto })
  async useLink(
    @Body() input: UseLinkDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const entered = answer(await useLink({ ...this.ports, passwords: this.passwords, rules: this.rules }, input));
    return this.door.open(request, reply, entered, 'link');
  }

  @Post('password')
  @HttpCode(204)
  @ForOwnSignIn()
  @Says('Changes the own password and ends every other session of the person.')
  async changePassword(
    @Body() input: ChangePasswordDto,
    @CurrentPerson() person: PersonRow,
    @Req() request: FastifyRequest,
  ): Promise<void> {
    const tried = await this.door.tryOf(request, 'password', person.login);
    const token = readSessionCookie(request) ?? '';
    const outcome = await changeOwnPassword({ ...this.ports, passwords: this.passwords }, person, { ...input, token });
    if (outcome.ok || outcome.refusal.field !== 'current') await this.door.right(tried);
    answer(outcome);
  }

  @Delete('all')
  @HttpCode(204)
  @ForOwnSignIn()
  @Says('Ends every session of the person.')
  async signOutEverywhere(
    @CurrentPerson() person: PersonRow,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await signOutEverywhere(this.ports, person.id);
    clearCookie(request, reply, 'session');
  }

  @Get('demo')
  @OpenToAll()
  @Says("The demo shop's people; empty in a real shop.")
  @ZodResponse({ status: 200, type: DemoPeopleDto })
  demoPeople() {
    return this.config.demo ? listDemoPeople(this.ports) : [];
  }
}
