import { Body, Controller, Delete, Get, HttpCode, Inject, Patch, Post } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  changeWebhook as changeWebhookSchema,
  newWebhook,
  webhookAdded,
  webhookDeliveries,
  webhookList,
  webhookView,
} from '../../../../libs/contracts';
import {
  addWebhook,
  changeWebhook,
  deliverAgain,
  listDeliveries,
  listWebhooks,
  removeWebhook,
  renewWebhookSecret,
  tryWebhook,
  type Actor,
  type Courier,
  type Ports,
  type Seals,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { COURIER, PORTS, SEALS } from '../tokens';

class WebhookListDto extends createZodDto(webhookList) {}
class WebhookDto extends createZodDto(webhookView) {}
class NewWebhookDto extends createZodDto(newWebhook) {}
class ChangeWebhookDto extends createZodDto(changeWebhookSchema) {}
class WebhookAddedDto extends createZodDto(webhookAdded) {}
class WebhookDeliveriesDto extends createZodDto(webhookDeliveries) {}

@Controller('webhooks')
@Says('Addresses of other programs that are told of flags, callbacks and rechecks.')
export class WebhooksController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(SEALS) private readonly seals: Seals,
    @Inject(COURIER) private readonly courier: Courier,
  ) {}

  @Get()
  @Permit('manage-webhooks')
  @Says('The addresses, with how much is on its way to each and how much was set aside.')
  @ZodResponse({ status: 200, type: WebhookListDto })
  list() {
    return listWebhooks(this.ports);
  }

  @Post()
  @HttpCode(201)
  @Permit('manage-webhooks')
  @Says('Adds an address; what its events are signed with is answered this once.')
  @ZodResponse({ status: 201, type: WebhookAddedDto })
  async add(@Body() input: NewWebhookDto, @CurrentActor() actor: Actor) {
    return answer(await addWebhook({ ...this.ports, seals: this.seals, courier: this.courier }, actor, input));
  }

  @Patch(':id')
  @Permit('manage-webhooks')
  @Says('Changes where to, what of, or whether an address is told.')
  @ZodResponse({ status: 200, type: WebhookDto })
  async change(@RowIdParam('id') id: number, @IfMatch() version: number, @Body() input: ChangeWebhookDto) {
    return answer(await changeWebhook({ ...this.ports, courier: this.courier }, { ...input, id, version }));
  }

  @Post(':id/secret')
  @HttpCode(200)
  @Permit('manage-webhooks')
  @Says('Signs what is sent to an address with another secret from now on; it is answered this once.')
  @ZodResponse({ status: 200, type: WebhookAddedDto })
  async renewSecret(@RowIdParam('id') id: number, @IfMatch() version: number) {
    return answer(await renewWebhookSecret({ ...this.ports, seals: this.seals }, { id, version }));
  }

  @Delete(':id')
  @HttpCode(204)
  @Permit('manage-webhooks')
  @Says('Removes an address with all that was on its way to it.')
  async remove(@RowIdParam('id') id: number): Promise<void> {
    answer(await removeWebhook(this.ports, id));
  }

  @Get(':id/deliveries')
  @Permit('manage-webhooks')
  @Says('The last hundred events for an address, newest first, those set aside before all others.')
  @ZodResponse({ status: 200, type: WebhookDeliveriesDto })
  async deliveries(@RowIdParam('id') id: number) {
    return answer(await listDeliveries(this.ports, id));
  }

  @Post(':id/trial')
  @HttpCode(200)
  @Permit('manage-webhooks')
  @Says('Sends a trial event to an address, signed as any other.')
  @ZodResponse({ status: 200, type: WebhookDeliveriesDto })
  async tryOut(@RowIdParam('id') id: number) {
    return answer(await tryWebhook(this.ports, id));
  }

  @Post(':id/deliveries/:deliveryId/again')
  @HttpCode(200)
  @Permit('manage-webhooks')
  @Says('Sends an event again that was delivered or set aside, with the same id.')
  @ZodResponse({ status: 200, type: WebhookDeliveriesDto })
  async again(@RowIdParam('id') id: number, @RowIdParam('deliveryId') deliveryId: number) {
    return answer(await deliverAgain(this.ports, { id, deliveryId }));
  }
}
