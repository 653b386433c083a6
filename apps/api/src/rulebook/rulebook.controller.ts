import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { createZodDto, ZodResponse } from 'nestjs-zod';
import {
  chartQuery,
  findingList,
  findingsQuery,
  ruleList,
  rulebookOverview,
  rulesQuery,
  wallChartView,
} from '../../../../libs/contracts';
import { listFindings, listRules, viewRulebook, viewWallChart, type Ports } from '../../../../libs/usecases';
import { Permit } from '../auth/permit';
import { answer } from '../http/answer';
import { PORTS } from '../tokens';

class RulebookOverviewDto extends createZodDto(rulebookOverview) {}
class RulesQueryDto extends createZodDto(rulesQuery) {}
class RuleListDto extends createZodDto(ruleList) {}
class FindingsQueryDto extends createZodDto(findingsQuery) {}
class FindingListDto extends createZodDto(findingList) {}
class ChartQueryDto extends createZodDto(chartQuery) {}
class WallChartDto extends createZodDto(wallChartView) {}

@Controller('rulebook')
export class RulebookController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-bulletins')
  @ZodResponse({ status: 200, type: RulebookOverviewDto })
  overview() {
    return viewRulebook(this.ports);
  }

  @Get('rules')
  @Permit('see-bulletins')
  @ZodResponse({ status: 200, type: RuleListDto })
  rules(@Query() query: RulesQueryDto) {
    return listRules(this.ports, query);
  }

  @Get('findings')
  @Permit('see-bulletins')
  @ZodResponse({ status: 200, type: FindingListDto })
  findings(@Query() query: FindingsQueryDto) {
    return listFindings(this.ports, query);
  }

  @Get('wall-chart/:line')
  @Permit('see-bulletins')
  @ZodResponse({ status: 200, type: WallChartDto })
  async wallChart(@Param('line') line: string, @Query() query: ChartQueryDto) {
    return answer(await viewWallChart(this.ports, { ...query, line }));
  }
}
