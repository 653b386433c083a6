import type { BenchLoad, BenchTicket } from '../../contracts';

/**
 * The minutes of labour that lie on a bench. A ticket that waits for handover needs no bench any more; one that is on
 * hold cannot be worked on and is counted apart; one without minutes is only counted.
 */
export function benchLoad(dayMinutes: number, tickets: readonly BenchTicket[]): BenchLoad {
  const open = tickets.filter(({ stage }) => stage !== 'handover');
  const sum = (some: readonly BenchTicket[]) => some.reduce((minutes, one) => minutes + one.labourMinutes, 0);
  return {
    dayMinutes,
    openMinutes: sum(open.filter(({ onHold }) => onHold === null)),
    onHoldMinutes: sum(open.filter(({ onHold }) => onHold !== null)),
    unestimated: open.filter(({ labourMinutes }) => labourMinutes === 0).length,
  };
}
