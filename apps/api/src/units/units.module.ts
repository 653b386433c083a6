import { Module } from '@nestjs/common';
import { UnitsController } from './units.controller';

@Module({ controllers: [UnitsController] })
export class UnitsModule {}
