import { Module } from '@nestjs/common';
import { PrintSettingsController } from './print-settings.controller';
import { SheetController } from './sheet.controller';

@Module({ controllers: [SheetController, PrintSettingsController] })
export class PrintsModule {}
