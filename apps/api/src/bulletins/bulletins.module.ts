import { Module } from '@nestjs/common';
import { BulletinsController } from './bulletins.controller';

@Module({ controllers: [BulletinsController] })
export class BulletinsModule {}
