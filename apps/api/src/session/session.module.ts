import { Module } from '@nestjs/common';
import { SecondFactorController } from './second-factor.controller';
import { SessionController } from './session.controller';
import { SignInDoor } from './sign-in-door';

@Module({ controllers: [SessionController, SecondFactorController], providers: [SignInDoor] })
export class SessionModule {}
