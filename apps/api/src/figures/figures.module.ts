import { Module } from '@nestjs/common';
import { FiguresController } from './figures.controller';

@Module({ controllers: [FiguresController] })
export class FiguresModule {}
