import { Controller, Inject, Sse, type MessageEvent } from '@nestjs/common';
import { Observable } from 'rxjs';
import { liveEvent } from '../../../../libs/contracts';
import type { Ports } from '../../../../libs/usecases';
import { ForSignedIn } from '../auth/permit';
import { Says } from '../open-api/says';
import { PORTS } from '../tokens';

/** Hints of the same thing within this time are told as one. */
const GATHER_MS = 200;
/** A page that heard nothing for so long looks by itself: a hint can get lost, the database cannot. */
const LOOK_ANYWAY_MS = 15_000;

@Controller('live')
@Says('Hints that something has changed.')
export class LiveController {
  constructor(@Inject(PORTS) private readonly ports: Ports) {}

  /** Server-sent events; each says only what to fetch anew. */
  @Sse()
  @ForSignedIn()
  @Says('Server-sent events; each names a kind of thing to fetch anew.')
  follow(): Observable<MessageEvent> {
    return new Observable((page) => {
      const gathered = new Set<string>();
      const tell = (event: string) => page.next({ data: event });
      const flush = setInterval(() => {
        for (const event of gathered) tell(event);
        gathered.clear();
      }, GATHER_MS);
      const look = setInterval(() => tell(JSON.stringify({ kind: 'look', id: null })), LOOK_ANYWAY_MS);
      const stop = this.ports.store.hints.follow('live', (text) => {
        const read = liveEvent.safeParse(JSON.parse(text));
        if (read.success) gathered.add(JSON.stringify(read.data));
      });
      return () => {
        stop();
        clearInterval(flush);
        clearInterval(look);
      };
    });
  }
}
