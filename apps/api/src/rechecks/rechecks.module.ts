import { Module } from '@nestjs/common';
import { RechecksController } from './rechecks.controller';

@Module({ controllers: [RechecksController] })
export class RechecksModule {}
