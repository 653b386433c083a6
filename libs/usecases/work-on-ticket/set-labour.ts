import type { SetLabour, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Sets the lines of labour and whatever else is asked for besides parts. */
export function setLabour(
  ports: Ports,
  actor: Actor,
  { lines, ...on }: OnTicket & SetLabour,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, () =>
    done({
      patch: { labourLines: lines },
      events: [{ kind: 'labour', data: sumsOfLabour(lines), personId: actor.id }],
    }),
  );
}

function sumsOfLabour(lines: SetLabour['lines']) {
  return {
    minutes: lines.reduce((sum, { minutes }) => sum + minutes, 0),
    minor: lines.reduce((sum, { minor }) => sum + minor, 0),
  };
}
