import { Module } from '@nestjs/common';
import { ShelfOrdersController } from './shelf-orders.controller';
import { ShelfController } from './shelf.controller';

@Module({ controllers: [ShelfController, ShelfOrdersController] })
export class ShelfModule {}
