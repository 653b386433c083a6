import { Body, Controller, Get, HttpCode, Inject, Post, Put } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { changeMailServer, mailServerView, mailSetUp, mailTrial, mailTrialSent } from '../../../../libs/contracts';
import {
  settleMailServer,
  tryMail,
  viewMailServer,
  viewMailSetUp,
  type MailSource,
  type OpenMailer,
  type Store,
} from '../../../../libs/usecases';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { Says } from '../open-api/says';
import { MAIL } from '../tokens';

class ChangeMailServerDto extends createZodDto(changeMailServer) {}
class MailServerDto extends createZodDto(mailServerView) {}
class MailSetUpDto extends createZodDto(mailSetUp) {}
class MailTrialDto extends createZodDto(mailTrial) {}
class MailTrialSentDto extends createZodDto(mailTrialSent) {}

@Controller('settings')
@Says('Through which server, under which name, e-mails to owners go.')
export class MailServerController {
  constructor(@Inject(MAIL) private readonly source: MailSource & { store: Store; openMailer: OpenMailer }) {}

  @Get('mail')
  @Permit('work-callbacks')
  @Says('Whether e-mails can be sent, through which server and from whom; the password is told to nobody.')
  @ZodResponse({ status: 200, type: MailSetUpDto })
  setUp() {
    return viewMailSetUp(this.source);
  }

  @Get('mail-server')
  @Permit('change-mail-server')
  @Says('The mail server as it is settled, and what the environment says instead; without the password.')
  @ZodResponse({ status: 200, type: MailServerDto })
  view() {
    return viewMailServer(this.source);
  }

  @Put('mail-server')
  @Permit('change-mail-server')
  @Says('Settles the mail server or takes it away; a password left out stays, as long as the host does.')
  @ZodResponse({ status: 200, type: MailServerDto })
  async settle(@IfMatch() version: number, @Body() { server }: ChangeMailServerDto) {
    return answer(await settleMailServer(this.source, { server, version }));
  }

  @Post('mail-server/trial')
  @HttpCode(200)
  @Permit('change-mail-server')
  @Says('Sends a trial letter through the server in force; refused with what the server said where it was not taken.')
  @ZodResponse({ status: 200, type: MailTrialSentDto })
  async tryOut(@Body() input: MailTrialDto) {
    return answer(await tryMail(this.source, input));
  }
}
