import { Module } from '@nestjs/common';
import { SerialSchemesController } from './serial-schemes.controller';
import { StandardEditionsController } from './standard-editions.controller';

@Module({ controllers: [SerialSchemesController, StandardEditionsController] })
export class ShopDataModule {}
