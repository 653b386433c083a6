import { Body, Controller, Get, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import type { Config } from '../../../../libs/config';
import { elsewhereBack, elsewhereBegun, elsewhereOffered, me, type Me } from '../../../../libs/contracts';
import {
  letInFromElsewhere,
  type AtTheProvider,
  type Elsewhere,
  type Ports,
  type Seals,
  type SessionRules,
} from '../../../../libs/usecases';
import { OpenToAll } from '../auth/permit';
import { clearCookie, readCookie, setCookie } from '../auth/session-cookie';
import { ProblemError } from '../http/problem-error';
import { Says } from '../open-api/says';
import { CONFIG, ELSEWHERE, PORTS, SEALS, SESSION_RULES } from '../tokens';
import { SignInDoor } from './sign-in-door';

class OfferedDto extends createZodDto(elsewhereOffered) {}
class BegunDto extends createZodDto(elsewhereBegun) {}
class BackDto extends createZodDto(elsewhereBack) {}
class MeDto extends createZodDto(me) {}

/** How long somebody may be away at the provider. */
const AWAY_MS = 10 * 60_000;
const ABOUT = 'sign-in elsewhere';
const remembered = z.object({ state: z.string(), nonce: z.string(), verifier: z.string(), until: z.number() });

/** Signing in with another provider: the page goes there and comes back with an answer, which is sent here. */
@Controller('session/elsewhere')
@Says('Signing in with an OpenID Connect provider, where the shop has one.')
export class ElsewhereController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(ELSEWHERE) private readonly elsewhere: Elsewhere | null,
    @Inject(SEALS) private readonly seals: Seals,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
    @Inject(SignInDoor) private readonly door: SignInDoor,
  ) {}

  @Get()
  @OpenToAll()
  @Says('What the other way of signing in is called; null where there is none.')
  @ZodResponse({ status: 200, type: OfferedDto })
  offered() {
    return { name: this.elsewhere?.name ?? null };
  }

  @Post()
  @HttpCode(200)
  @OpenToAll()
  @Says('Begins to sign in elsewhere: where the browser is to go.')
  @ZodResponse({ status: 200, type: BegunDto })
  async begin(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply) {
    const { address, remember } = await this.provider().begin(this.backTo(request));
    const text = JSON.stringify({ ...remember, until: this.ports.clock.now() + AWAY_MS });
    setCookie(request, reply, { of: 'elsewhere', token: this.seals.seal(text, ABOUT) });
    return { address };
  }

  @Post('back')
  @HttpCode(200)
  @OpenToAll()
  @Says('Signs in with what the browser came back with.')
  @ZodResponse({ status: 200, type: MeDto })
  async back(
    @Body() { query }: BackDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Me> {
    const before = this.remembered(request);
    clearCookie(request, reply, 'elsewhere');
    const found = before && (await this.provider().finish(`${this.backTo(request)}${query}`, before));
    if (!found) return this.door.refuse(request, 'wrong-elsewhere', 'That sign-in did not come through; begin again.');
    const all = { ...this.ports, rules: this.rules };
    const outcome = await letInFromElsewhere(all, found, this.config.elsewhere?.newPeople);
    if (!outcome.ok) return this.door.refuse(request, 'wrong-elsewhere', outcome.refusal.detail);
    return this.door.open(request, reply, outcome.value, 'elsewhere');
  }

  private provider(): Elsewhere {
    if (!this.elsewhere) throw new ProblemError(404, 'not-found', 'This shop has no other way to sign in.');
    return this.elsewhere;
  }

  private backTo({ protocol, host }: FastifyRequest): string {
    return `${this.config.publicUrl ?? `${protocol}://${host}`}/from-elsewhere`;
  }

  /** What this browser was sent away with; null when it was not, or is too long away. */
  private remembered(request: FastifyRequest): AtTheProvider | null {
    const sealed = readCookie(request, 'elsewhere');
    const text = sealed && this.seals.open(sealed, ABOUT);
    if (!text) return null;
    const before = remembered.parse(JSON.parse(text));
    return before.until > this.ports.clock.now() ? before : null;
  }
}
