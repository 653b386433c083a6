import { Module } from '@nestjs/common';
import { BenchesController } from './benches.controller';

@Module({ controllers: [BenchesController] })
export class BenchesModule {}
