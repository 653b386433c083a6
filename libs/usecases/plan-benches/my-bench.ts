import type { BenchJob, BenchTicket, ChooseMyBench, MyBench } from '../../contracts';
import { formatDay } from '../../day';
import { missingForStage } from '../../ticket';
import type { Actor } from '../actor';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { gateFacts, loadTicket } from '../view-ticket/index';
import { residentPapers, type Papers } from '../view-unit/index';
import { benchLoad } from './bench-load';
import { refuseOtherBench } from './put-on-list';

/** The list of the bench the person works at, each ticket with what the gate of its stage still asks for. */
export async function viewMyBench(ports: Ports, actor: Actor): Promise<MyBench> {
  const { store, clock } = ports;
  const [rows, mine] = await Promise.all([store.benches.at(actor.locationId), store.benches.ofPerson(actor.id)]);
  const bench = rows.find(({ id }) => id === mine) ?? null;
  const [tickets, papers] = await Promise.all([
    bench ? store.benches.ticketsOn(bench.id) : [],
    residentPapers(store, clock),
  ]);
  return {
    today: formatDay(clock.today()),
    benches: rows.map(({ id, code, name, location }) => ({ id, code, name, location })),
    bench: bench && { id: bench.id, code: bench.code, name: bench.name, location: bench.location },
    load: bench && benchLoad(bench.dayMinutes, tickets),
    jobs: await Promise.all(tickets.map((ticket) => jobOf(ports, actor, ticket, papers))),
  };
}

async function jobOf({ store, clock }: Ports, actor: Actor, ticket: BenchTicket, papers: Papers): Promise<BenchJob> {
  const whole = await loadTicket(store, clock, ticket.id, actor.locationId, papers);
  const missing = whole ? missingForStage(ticket.stage, gateFacts(whole)).map(({ sentence }) => sentence) : [];
  return { ...ticket, missing };
}

/** Keeps at which bench the person works; null is none. */
export async function chooseMyBench(ports: Ports, actor: Actor, { benchId }: ChooseMyBench): Promise<Outcome<MyBench>> {
  const chosen = await ports.store.transaction(async (tx): Promise<Outcome<null>> => {
    const elsewhere = await refuseOtherBench(tx, benchId, actor.locationId, 'benchId');
    if (elsewhere) return elsewhere;
    await tx.benches.setOfPerson(actor.id, benchId);
    return done(null);
  });
  return chosen.ok ? done(await viewMyBench(ports, actor)) : chosen;
}
