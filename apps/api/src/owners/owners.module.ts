import { Module } from '@nestjs/common';
import { OwnersController } from './owners.controller';
import { PersonalDataController } from './personal-data.controller';

@Module({ controllers: [OwnersController, PersonalDataController] })
export class OwnersModule {}
