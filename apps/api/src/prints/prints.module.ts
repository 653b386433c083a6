import { Module } from '@nestjs/common';
import { PhotosModule } from '../photos/photos.module';
import { PrintSettingsController } from './print-settings.controller';
import { SheetController } from './sheet.controller';

@Module({ imports: [PhotosModule], controllers: [SheetController, PrintSettingsController] })
export class PrintsModule {}
