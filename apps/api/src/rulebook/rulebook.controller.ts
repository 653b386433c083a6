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
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

class RulebookOverviewDto extends createZodDto(rulebookOverview) {}
class RulesQueryDto extends createZodDto(rulesQuery) {}
class RuleListDto extends createZodDto(ruleList) {}
class FindingsQueryDto extends createZodDto(findingsQuery) {}
class FindingListDto extends createZodDto(findingList) {}
class ChartQueryDto extends createZodDto(chartQuery) {}
class WallChartDto extends createZodDto(wallChartView) {}

@Controller('rulebook')
@Says('The rules as they stand: papers, rules, findings and wall charts.')
export class RulebookController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-bulletins')
  @Says('The papers in force and how many rules each brings.')
  @ZodResponse({ status: 200, type: RulebookOverviewDto })
  overview() {
    return viewRulebook(this.ports);
  }

  @Get('rules')
  @Permit('see-bulletins')
  @Says('The rules of a line on a day, as known at an instant.')
  @ZodResponse({ status: 200, type: RuleListDto })
  rules(@Query() query: RulesQueryDto) {
    return listRules(this.ports, query);
  }

  @Get('findings')
  @Permit('see-bulletins')
  @Says('What the audit of the rulebook finds: gaps, overlaps, disputes.')
  @ZodResponse({ status: 200, type: FindingListDto })
  findings(@Query() query: FindingsQueryDto) {
    return listFindings(this.ports, query);
  }

  @Get('wall-chart/:line')
  @Permit('see-bulletins')
  @Says('The required part by build date, for each position of a line.')
  @ZodResponse({ status: 200, type: WallChartDto })
  async wallChart(@Param('line') line: string, @Query() query: ChartQueryDto) {
    return answer(await viewWallChart(this.ports, { ...query, line }));
  }
}
