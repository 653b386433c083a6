import type { WhatIf } from '../../contracts';
import type { ConsequencePlan, VerdictWrite } from '../judge-installs';
import type { StandingConsequences } from '../ports/install-store';

const MOST_NAMED = 100;
const ACTION_WORDS = {
  nothing: 'nothing to do',
  'next-service': 'at next service',
  'call-back': 'call back',
  'stop-use': 'stop use',
} as const;

/** Adds up plans, chunk by chunk, without keeping them. */
export class Tally {
  readonly first: VerdictWrite[] = [];
  private installs = 0;
  private changed = 0;
  private readonly tickets = new Set<number>();
  private readonly callbacks = new Set<number>();
  private readonly reasons = new Map<string, number>();

  add(plan: ConsequencePlan, standing: StandingConsequences): void {
    this.installs += plan.judged;
    for (const write of plan.verdicts) {
      if (write.from === write.to) continue;
      this.changed++;
      if (this.first.length < MOST_NAMED) this.first.push(write);
      const reason = `${write.from ?? 'not judged'} to ${write.to}, ${ACTION_WORDS[write.judgement.action]}`;
      this.reasons.set(reason, (this.reasons.get(reason) ?? 0) + 1);
    }
    for (const flag of plan.flags) this.tickets.add(flag.ticketId);
    const called = new Set(standing.reasons.filter((one) => one.live).map((one) => one.unitId));
    for (const { unitId } of plan.reasons) if (!called.has(unitId)) this.callbacks.add(unitId);
  }

  counts(): Pick<WhatIf, 'installs' | 'changed' | 'tickets' | 'callbacks' | 'byReason'> {
    const byReason = [...this.reasons].map(([reason, count]) => ({ reason, count })).sort((a, b) => b.count - a.count);
    const { installs, changed } = this;
    return { installs, changed, tickets: this.tickets.size, callbacks: this.callbacks.size, byReason };
  }
}
