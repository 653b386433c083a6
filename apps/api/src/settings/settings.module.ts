import { Module } from '@nestjs/common';
import { MailServerController } from './mail-server.controller';
import { SettingsController } from './settings.controller';
import { SignInRulesController } from './sign-in-rules.controller';

@Module({ controllers: [SettingsController, SignInRulesController, MailServerController] })
export class SettingsModule {}
