import { Module } from '@nestjs/common';
import { RulebookController } from './rulebook.controller';

@Module({ controllers: [RulebookController] })
export class RulebookModule {}
