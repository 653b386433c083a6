import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import { z } from 'zod';
import {
  addTradeNumber as addTradeNumberSchema,
  benches,
  lineDetail,
  lines,
  part,
  parts,
} from '../../../../libs/contracts';
import {
  addTradeNumber,
  findLine,
  listBenches,
  listLines,
  removeTradeNumber,
  searchParts,
  type Ports,
} from '../../../../libs/usecases';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { RowIdParam } from '../http/row-id';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class BenchesDto extends createZodDto(benches) {}
class LinesDto extends createZodDto(lines) {}
class LineDetailDto extends createZodDto(lineDetail) {}
class PartDto extends createZodDto(part) {}
class AddTradeNumberDto extends createZodDto(addTradeNumberSchema) {}
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
  @Says('Parts by number, trade number or name.')
  @ZodResponse({ status: 200, type: PartsDto })
  parts(@Query() { q }: PartsQuery) {
    return searchParts(this.ports, q);
  }

  @Post('parts/:id/trade-numbers')
  @HttpCode(200)
  @Permit('number-bags')
  @Says("Writes down the number in the bar code of a part's bag, and how many are in that bag.")
  @ZodResponse({ status: 200, type: PartDto })
  async addTradeNumber(@RowIdParam('id') partId: number, @Body() input: AddTradeNumberDto) {
    return answer(await addTradeNumber(this.ports, { partId, ...input }));
  }

  @Delete('parts/:id/trade-numbers/:number')
  @Permit('number-bags')
  @Says('Takes a trade number away from its part.')
  @ZodResponse({ status: 200, type: PartDto })
  async removeTradeNumber(@RowIdParam('id') partId: number, @Param('number') number: string) {
    return answer(await removeTradeNumber(this.ports, { partId, number }));
  }
}
