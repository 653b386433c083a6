import { Body, Controller, Get, Header, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { CALLBACK_LISTS, writeToOwners, writtenToOwners } from '../../../../libs/contracts';
import {
  exportCallbacks,
  mailInForce,
  NO_MAIL_SERVER,
  printLabels,
  printLetters,
  queueMails,
  refused,
  writeLetters,
  type Actor,
  type MailSource,
  type Printing,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { Repeatable } from '../http/repeat.interceptor';
import { Says } from '../open-api/says';
import { pdfFile } from '../prints/pdf-file';
import { MAIL, PRINTING } from '../tokens';

class WriteToOwnersDto extends createZodDto(writeToOwners) {}
class WrittenToOwnersDto extends createZodDto(writtenToOwners) {}
class ListQuery extends createZodDto(z.object({ state: z.enum(CALLBACK_LISTS).default('due') })) {}

const PDF = { answers: ['application/pdf'] };

@Controller('callbacks')
@Says('Letters, labels, e-mails and lists to owners who are to be contacted.')
@Repeatable()
export class LettersController {
  constructor(
    @Inject(PRINTING) private readonly printing: Printing,
    @Inject(MAIL) private readonly source: MailSource,
  ) {}

  @Get('list.csv')
  @Permit('work-callbacks')
  @Header('content-type', 'text/csv; charset=utf-8')
  @Header('content-disposition', 'attachment; filename="callbacks.csv"')
  @Says('A list of callbacks as a table for another program.', { answers: ['text/csv'] })
  list(@Query() { state }: ListQuery, @CurrentActor() actor: Actor) {
    return exportCallbacks(this.printing, actor, state);
  }

  @Post('letters')
  @HttpCode(200)
  @Permit('work-callbacks')
  @Says('Notes a letter to each owner and answers the batch under which they are printed.')
  @ZodResponse({ status: 200, type: WrittenToOwnersDto })
  async write(@Body() input: WriteToOwnersDto, @CurrentActor() actor: Actor) {
    return answer(await writeLetters(this.printing, actor, input));
  }

  @Get('letters/:batch/letters.pdf')
  @Permit('work-callbacks')
  @Says('The letters of a batch in one file.', PDF)
  async letters(@Param('batch') batch: string, @CurrentActor() actor: Actor) {
    return pdfFile(answer(await printLetters(this.printing, actor, batch)));
  }

  @Get('letters/:batch/labels.pdf')
  @Permit('work-callbacks')
  @Says('The address labels of a batch, on sheets of labels as the shop has them.', PDF)
  async labels(@Param('batch') batch: string, @CurrentActor() actor: Actor) {
    return pdfFile(answer(await printLabels(this.printing, actor, batch)));
  }

  @Post('mails')
  @HttpCode(200)
  @Permit('work-callbacks')
  @Says('Keeps an e-mail to each owner, to be sent by a worker.')
  @ZodResponse({ status: 200, type: WrittenToOwnersDto })
  async mail(@Body() input: WriteToOwnersDto, @CurrentActor() actor: Actor) {
    if ((await mailInForce(this.source)) === null) return answer(refused('conflict', NO_MAIL_SERVER));
    return answer(await queueMails(this.printing, actor, input));
  }
}
