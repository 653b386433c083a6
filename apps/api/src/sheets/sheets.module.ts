import { Module } from '@nestjs/common';
import { ExportBrake } from './export-brake';
import { ExportsController } from './exports.controller';
import { RulebookFileController } from './rulebook-file.controller';
import { SheetsController } from './sheets.controller';

// Exports come first: their addresses would otherwise be taken for a sheet's number.
@Module({ controllers: [ExportsController, RulebookFileController, SheetsController], providers: [ExportBrake] })
export class SheetsModule {}
