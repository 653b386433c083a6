import { Controller, Get, Inject, Logger, Param, Query, type StreamableFile } from '@nestjs/common';
import { createZodDto } from 'nestjs-zod';
import { z } from 'zod';
import { sheetKind } from '../../../../libs/contracts';
import { csvLine, headingsFor, kindOf, workedLines } from '../../../../libs/sheets';
import { writeWorkbook } from '../../../../libs/sheet-files';
import { exportSheet, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { ProblemError } from '../http/problem-error';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';
import { CSV, download, XLSX } from './download';
import { ExportBrake } from './export-brake';

const exportQuery = z.object({ format: z.enum(['csv', 'xlsx']).default('csv') });
class ExportQueryDto extends createZodDto(exportQuery) {}

/** A workbook is put together in memory; more rows than that leave as CSV, which streams. */
const MOST_IN_WORKBOOK = 20_000;

@Controller('sheets')
@Says('Spreadsheets of the shop: brought, looked at in a dry run, imported whole or not at all.')
export class ExportsController {
  private readonly log = new Logger('exports');

  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(ExportBrake) private readonly brake: ExportBrake,
  ) {}

  @Get('templates/:kind')
  @Permit('bring-in')
  @Says('An empty spreadsheet of the kind, with a worked line.', { answers: [CSV, XLSX] })
  async template(@Param('kind') kind: string, @Query() { format }: ExportQueryDto): Promise<StreamableFile> {
    const id = kindNamed(kind);
    const lines = workedLines(kindOf(id));
    return format === 'csv'
      ? download(csvOf(kindOf(id).columns, [lines]), `${id}-template.csv`, CSV)
      : download(await writeWorkbook(id, headingsFor(kindOf(id)), lines), `${id}-template.xlsx`, XLSX);
  }

  @Get('exports/:kind')
  @Permit('take-out')
  @Says('Everything of a kind as a spreadsheet; importing it again changes nothing.', {
    more: `At most 100 a minute for each person. A workbook holds at most ${MOST_IN_WORKBOOK} rows; CSV holds any number.`,
    answers: [CSV, XLSX],
  })
  async export(
    @Param('kind') kind: string,
    @Query() { format }: ExportQueryDto,
    @CurrentActor() actor: Actor,
  ): Promise<StreamableFile> {
    this.brake.count(actor.id);
    const id = kindNamed(kind);
    this.log.warn(`person ${actor.id} takes ${id} out as ${format}`);
    const rows = exportSheet(this.ports, actor, id);
    if (format === 'csv') return download(csvOf(kindOf(id).columns, rows), `${id}.csv`, CSV);
    const all: (readonly string[])[] = [];
    for await (const batch of rows) {
      all.push(...batch);
      if (all.length > MOST_IN_WORKBOOK)
        throw new ProblemError(
          400,
          'bad-input',
          `There are more than ${MOST_IN_WORKBOOK} rows; take them out as CSV.`,
          { field: 'format' },
        );
    }
    return download(await writeWorkbook(id, headingsFor(kindOf(id)), all), `${id}.xlsx`, XLSX);
  }
}

function kindNamed(text: string) {
  const read = sheetKind.safeParse(text);
  if (read.success) return read.data;
  throw new ProblemError(
    404,
    'not-found',
    `There is no kind of spreadsheet called '${text.slice(0, 40)}'; there are ${sheetKind.options.join(', ')}.`,
  );
}

/** With a byte order mark, by which spreadsheets know UTF-8. */
async function* csvOf(
  columns: Readonly<Record<string, { readonly heading: string }>>,
  rows: AsyncIterable<readonly (readonly string[])[]> | Iterable<readonly (readonly string[])[]>,
): AsyncGenerator<string> {
  yield `\uFEFF${csvLine(Object.values(columns).map(({ heading }) => heading))}\r\n`;
  for await (const batch of rows) yield batch.map((row) => `${csvLine(row)}\r\n`).join('');
}
