import { Body, Controller, Delete, Get, HttpCode, Inject, Post, Query, Req, type StreamableFile } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import {
  importSheet as importSchema,
  lookAtSheet as lookSchema,
  sheetKind,
  sheetView,
} from '../../../../libs/contracts';
import { ENCODINGS, openSheet, SheetRefused } from '../../../../libs/sheet-files';
import {
  bringSheet,
  dropSheet,
  importSheet,
  lookAtSheet,
  rejectedRows,
  viewSheet,
  type Actor,
  type Ports,
} from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { IfMatch } from '../http/if-match';
import { ProblemError } from '../http/problem-error';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';
import { CSV, download } from './download';
import { withFile } from './take-file';

const bringQuery = z.object({ kind: sheetKind, encoding: z.enum(ENCODINGS).optional() });

class BringQueryDto extends createZodDto(bringQuery) {}
class SheetDto extends createZodDto(sheetView) {}
class LookAtSheetDto extends createZodDto(lookSchema) {}
class ImportSheetDto extends createZodDto(importSchema) {}

@Controller('sheets')
@Says('Spreadsheets of the shop: brought, looked at in a dry run, imported whole or not at all.')
export class SheetsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Post()
  @Permit('bring-in')
  @Says('Takes a spreadsheet in, to be looked at; nothing of the shop changes.', {
    more: 'CSV in any usual encoding, or the first sheet of an `.xlsx` workbook, in a field named `file`. It is kept for a day, for who brought it.',
    takes: 'multipart/form-data',
  })
  @ZodResponse({ status: 201, type: SheetDto })
  bring(@Query() { kind, encoding }: BringQueryDto, @Req() request: FastifyRequest, @CurrentActor() actor: Actor) {
    return withFile(request, async ({ path, name }) => {
      try {
        const source = await openSheet(path, name, encoding);
        return answer(await bringSheet(this.ports, actor, { kind, fileName: name, source }));
      } catch (error) {
        if (!(error instanceof SheetRefused)) throw error;
        throw new ProblemError(error.tooLarge ? 413 : 400, 'bad-input', error.message, { field: 'file' });
      }
    });
  }

  @Get(':id')
  @Permit('bring-in')
  @Says('A spreadsheet that was brought: how it is read, and what it would change.')
  @ZodResponse({ status: 200, type: SheetDto })
  async view(@RowIdParam('id') id: number, @CurrentActor() actor: Actor) {
    return answer(await viewSheet(this.ports, actor, id));
  }

  @Post(':id/look')
  @HttpCode(200)
  @Permit('bring-in')
  @Says('The dry run: every problem by row and column, and what an import would add, change and leave.')
  @ZodResponse({ status: 200, type: SheetDto })
  async look(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: LookAtSheetDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await lookAtSheet(this.ports, actor, { ...input, id, version }));
  }

  @Post(':id/import')
  @HttpCode(200)
  @Permit('bring-in')
  @Says('Imports what the dry run showed, all of it or nothing.', {
    more: 'One rejected row keeps everything out, unless `leaveOutRejected` is set. What can change an answer starts a recheck.',
  })
  @ZodResponse({ status: 200, type: SheetDto })
  async import(
    @RowIdParam('id') id: number,
    @IfMatch() version: number,
    @Body() input: ImportSheetDto,
    @CurrentActor() actor: Actor,
  ) {
    return answer(await importSheet(this.ports, actor, { ...input, id, version }));
  }

  @Get(':id/rejected')
  @Permit('bring-in')
  @Says('The rejected rows as they stood in the file, each with why, as CSV.', { answers: [CSV] })
  async rejected(@RowIdParam('id') id: number, @CurrentActor() actor: Actor): Promise<StreamableFile> {
    const { fileName, lines } = answer(await rejectedRows(this.ports, actor, id));
    return download(lines, fileName, CSV);
  }

  @Delete(':id')
  @HttpCode(204)
  @Permit('bring-in')
  @Says('Throws a spreadsheet away that was brought.')
  async drop(@RowIdParam('id') id: number, @CurrentActor() actor: Actor): Promise<void> {
    answer(await dropSheet(this.ports, actor, id));
  }
}
