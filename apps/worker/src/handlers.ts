import type { Handler } from '../../../libs/queue';
import { beginRecheck, judgeChunk, type Ports } from '../../../libs/usecases';

/** One thin handler per job. */
export function handlersOn(ports: Ports, chunkUnits?: number): readonly Handler[] {
  return [
    { job: 'plan-chunks', run: (payload) => beginRecheck(ports, payload, chunkUnits) },
    { job: 'judge-chunk', run: (payload) => judgeChunk(ports, payload) },
  ];
}
