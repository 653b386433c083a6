import { Controller, Get, Header, Inject } from '@nestjs/common';
import { viewMetrics, type Ports } from '../../../../libs/usecases';
import { Permit } from '../auth/permit';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

@Controller('metrics')
@Says('Figures for monitoring programs.')
export class MetricsController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  @Get()
  @Permit('see-metrics')
  @Says('How the queue of rechecks stands, as Prometheus text.')
  @Header('content-type', 'text/plain; version=0.0.4; charset=utf-8')
  view(): Promise<string> {
    return viewMetrics(this.ports);
  }
}
