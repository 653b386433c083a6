import { readFile } from 'node:fs/promises';
import { Controller, Get, HttpCode, Inject, Post, Query, Req, type StreamableFile } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { rulebookImported } from '../../../../libs/contracts';
import { exportRulebookFile, importRulebookFile, type Actor, type Ports } from '../../../../libs/usecases';
import { CurrentActor } from '../auth/current-actor';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { ProblemError } from '../http/problem-error';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';
import { download } from './download';
import { ExportBrake } from './export-brake';
import { withFile } from './take-file';

const importQuery = z.object({ dryRun: z.stringbool().default(false) });
class ImportQueryDto extends createZodDto(importQuery) {}
class ImportedDto extends createZodDto(rulebookImported) {}

@Controller('rulebook-file')
@Says('The open rulebook file: all that the shop holds true about parts, in and out without loss.')
export class RulebookFileController {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(ExportBrake) private readonly brake: ExportBrake,
  ) {}

  @Get()
  @Permit('take-out')
  @Says('The rulebook as a file, as the command line reads it; see docs/formats.md.', { answers: ['application/json'] })
  async export(@CurrentActor() actor: Actor): Promise<StreamableFile> {
    this.brake.count(actor.id);
    const text = JSON.stringify(await exportRulebookFile(this.ports), null, 2);
    return download(Buffer.from(`${text}\n`), 'rulebook.json', 'application/json');
  }

  @Post()
  @HttpCode(200)
  @Permit('bring-in')
  @Says('Takes a rulebook file in: adds what is new, and overwrites nothing that is on record.', {
    more: 'In a field named `file`. With `dryRun=true` nothing changes. Papers, versions of rules and supersessions on file are never overwritten: a file that says otherwise is refused.',
    takes: 'multipart/form-data',
  })
  @ZodResponse({ status: 200, type: ImportedDto })
  import(@Query() { dryRun }: ImportQueryDto, @Req() request: FastifyRequest, @CurrentActor() actor: Actor) {
    return withFile(request, async ({ path }) => {
      const file = jsonOf(await readFile(path, 'utf8'));
      return answer(await importRulebookFile(this.ports, actor, { file, dryRun }));
    });
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, '')) as unknown;
  } catch (error) {
    const why = error instanceof Error ? error.message : '';
    throw new ProblemError(400, 'bad-input', `The file is no JSON (${why.slice(0, 120)}); give a rulebook file.`, {
      field: 'file',
    });
  }
}
