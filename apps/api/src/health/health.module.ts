import { Module } from '@nestjs/common';
import { Ending } from './ending';
import { HealthController } from './health.controller';

@Module({ controllers: [HealthController], providers: [Ending] })
export class HealthModule {}
