import { Module } from '@nestjs/common';
import { ElsewhereController } from './elsewhere.controller';
import { SecondFactorController } from './second-factor.controller';
import { SessionController } from './session.controller';
import { SignInDoor } from './sign-in-door';

@Module({ controllers: [SessionController, SecondFactorController, ElsewhereController], providers: [SignInDoor] })
export class SessionModule {}
