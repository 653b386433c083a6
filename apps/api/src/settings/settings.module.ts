import { Module } from '@nestjs/common';
import { SettingsController } from './settings.controller';
import { SignInRulesController } from './sign-in-rules.controller';

@Module({ controllers: [SettingsController, SignInRulesController] })
export class SettingsModule {}
