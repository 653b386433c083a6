import { Body, Controller, Get, HttpCode, Inject, Post, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import {
  CALLBACK_LISTS,
  callbackPage,
  callbackView,
  dayText,
  newAttempt,
  rowId,
  settleCallback as settleCallbackSchema,
} from '../../../../libs/contracts';
import {
  attemptCallback,
  listCallbacks,
  settleCallback,
  viewCallback,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Repeatable } from '../http/repeat.interceptor';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

/** Where a page ends: urgent or not, the day of the next try, and the id of the last one shown. */
const PLACE = /^[01]\.(\d{4}-\d{2}-\d{2})\.(\d{1,10})$/;
const NEXT = { error: "expected the 'next' of the page before" };

class CallbackPageDto extends createZodDto(callbackPage) {}
class CallbackDto extends createZodDto(callbackView) {}
class NewAttemptDto extends createZodDto(newAttempt) {}
class SettleCallbackDto extends createZodDto(settleCallbackSchema) {}
class CallbacksQuery extends createZodDto(
  z.object({
    state: z.enum(CALLBACK_LISTS).default('open'),
    urgent: z.enum(['yes']).optional(),
    after: z.string().regex(PLACE, NEXT).refine(isPlace, NEXT).optional(),
  }),
) {}

@Controller('callbacks')
@Says('Owners to be contacted because the answer for their unit has changed.')
@Repeatable()
export class CallbacksController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-callbacks')
  @Says('Callbacks, stop use first, then by the day of the next try, page by page.')
  @ZodResponse({ status: 200, type: CallbackPageDto })
  list(@Query() { state, urgent, after }: CallbacksQuery, @CurrentActor() actor: Actor) {
    return listCallbacks(this.ports, actor, { state, urgentOnly: urgent === 'yes', after: after ?? null });
  }

  @Get(':id')
  @Permit('see-callbacks')
  @Says('One callback with its reasons and attempts.')
  @ZodResponse({ status: 200, type: CallbackDto })
  async view(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await viewCallback(this.ports, actor, id));
  }

  @Post(':id/attempts')
  @HttpCode(200)
  @Permit('work-callbacks')
  @Says('Records an attempt to reach the owner.')
  @ZodResponse({ status: 200, type: CallbackDto })
  async attempt(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: NewAttemptDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await attemptCallback(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/settle')
  @HttpCode(200)
  @Permit('settle-callbacks')
  @Says('Closes a callback with what came of it.')
  @ZodResponse({ status: 200, type: CallbackDto })
  async settle(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: SettleCallbackDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await settleCallback(this.ports, actor, { ...input, id, version }));
  }
}

/** Digits alone make neither a day nor an id. */
function isPlace(text: string): boolean {
  const [, on, id] = PLACE.exec(text) ?? [];
  return dayText.safeParse(on).success && rowId.safeParse(Number(id)).success;
}
