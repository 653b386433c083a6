import { Body, Controller, Get, HttpCode, Inject, Patch, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  changePerson as changePersonSchema,
  invited,
  newPerson,
  peopleList,
  personElsewhere,
  personView,
} from '../../../../libs/contracts';
import {
  addPerson,
  changePerson,
  listPeople,
  renewLink,
  resetSecondFactor,
  setElsewhere,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class PeopleListDto extends createZodDto(peopleList) {}
class PersonDto extends createZodDto(personView) {}
class NewPersonDto extends createZodDto(newPerson) {}
class ChangePersonDto extends createZodDto(changePersonSchema) {}
class PersonElsewhereDto extends createZodDto(personElsewhere) {}
class InvitedDto extends createZodDto(invited) {}

@Controller('people')
@Says('The people who work here.')
export class PeopleController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('manage-people')
  @Says('Everybody who works or has worked here, and the locations.')
  @ZodResponse({ status: 200, type: PeopleListDto })
  list() {
    return listPeople(this.ports);
  }

  @Post()
  @HttpCode(201)
  @Permit('manage-people')
  @Says('Adds a person and answers a one-time link to set a password.')
  @ZodResponse({ status: 201, type: InvitedDto })
  async add(@Body() input: NewPersonDto, @CurrentActor() actor: Actor) {
    return answer(await addPerson(this.ports, actor, input));
  }

  @Patch(':id')
  @Permit('manage-people')
  @Says("Changes a person's name, role or location, or ends their access.")
  @ZodResponse({ status: 200, type: PersonDto })
  async change(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: ChangePersonDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await changePerson(this.ports, actor, { ...input, id, version }));
  }

  @Put(':id/elsewhere')
  @Permit('manage-people')
  @Says('Writes down as whom a person may sign in with another provider, or takes it away.')
  @ZodResponse({ status: 200, type: PersonDto })
  async elsewhere(@RowIdParam('id') id: number, @IfMatch() version: number, @Body() input: PersonElsewhereDto) {
    return answer(await setElsewhere(this.ports, { ...input, id, version }));
  }

  @Post(':id/second-factor/reset')
  @HttpCode(204)
  @Permit('manage-people')
  @Says('Takes a lost second factor off a person, who can then add a new one.')
  async resetSecondFactor(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @CurrentActor() actor: Actor,
  ): Promise<void> {
    answer(await resetSecondFactor(this.ports, actor, { id, version }));
  }

  @Post(':id/link')
  @HttpCode(200)
  @Permit('manage-people')
  @Says('A new one-time link for a person; the one before stops working.')
  @ZodResponse({ status: 200, type: InvitedDto })
  async link(@RowIdParam('id') id: number, @IfMatch() version: number, @CurrentActor() actor: Actor) {
    return answer(await renewLink(this.ports, actor, { id, version }));
  }
}
