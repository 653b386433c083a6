import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import { benches, lineDetail, lines, parts } from '../../../../libs/contracts';
import { findLine, listBenches, listLines, searchParts, type Ports } from '../../../../libs/usecases';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class BenchesDto extends createZodDto(benches) {}
class LinesDto extends createZodDto(lines) {}
class LineDetailDto extends createZodDto(lineDetail) {}
class PartsDto extends createZodDto(parts) {}
class PartsQuery extends createZodDto(z.object({ q: z.string().trim().max(100).default('') })) {}

@Controller()
@Says('What the shop works with: benches, product lines and parts.')
export class CatalogueController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get('benches')
  @Permit('see-catalogue')
  @Says('The benches of the shop.')
  @ZodResponse({ status: 200, type: BenchesDto })
  benches() {
    return listBenches(this.ports);
  }

  @Get('lines')
  @Permit('see-catalogue')
  @Says('The product lines the shop knows.')
  @ZodResponse({ status: 200, type: LinesDto })
  lines() {
    return listLines(this.ports);
  }

  @Get('lines/:code')
  @Permit('see-catalogue')
  @Says('One product line with its models, options and positions.')
  @ZodResponse({ status: 200, type: LineDetailDto })
  async line(@Param('code') code: string) {
    return answer(await findLine(this.ports, code));
  }

  @Get('parts')
  @Permit('see-catalogue')
  @Says('Parts by number or name.')
  @ZodResponse({ status: 200, type: PartsDto })
  parts(@Query() { q }: PartsQuery) {
    return searchParts(this.ports, q);
  }
}
