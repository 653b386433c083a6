import type { EstimateRevision, EstimateView, MoneySettings } from '../../contracts';
import { sameLines, sayMinor, sumsOf, type EstimateLine, type Sums } from '../../ticket';
import type { Actor } from '../actor';
import type { NewEvent, PartRow, PickRow, TicketRow } from '../ports/index';

/** What an estimate rests on. */
interface Estimated {
  readonly ticket: Pick<TicketRow, 'labourLines'>;
  readonly picks: readonly PickRow[];
  readonly partsById: ReadonlyMap<number, PartRow>;
  readonly money: MoneySettings;
}

/** The lines of what is picked and not returned, then labour and whatever else; and what they come to. */
export function estimateAsItStands(whole: Estimated): Sums & { readonly lines: EstimateLine[] } {
  const { picks, ticket, money } = whole;
  const parts = picks.filter(({ state }) => state !== 'returned').map((pick) => partLine(whole, pick));
  const labour = ticket.labourLines.map(({ kind, what, minutes, minor }) => ({
    kind,
    part: null,
    what,
    quantity: 1,
    minutes,
    amountMinor: minor,
  }));
  const lines = [...parts, ...labour];
  const amounts = lines.map(({ amountMinor }) => amountMinor);
  return { ...sumsOf(amounts, money.tax), lines };
}

function partLine({ partsById }: Estimated, { partId, purpose, quantity, priceMinor }: PickRow): EstimateLine {
  const { number, name } = partsById.get(partId)!;
  const kind = purpose === 'spare' ? 'spare' : 'part';
  return { kind, part: number, what: name, quantity, minutes: 0, amountMinor: priceMinor };
}

/** The revision that would be written down now; null when the newest one says the same already. */
export function nextRevision(
  whole: Estimated,
  revisions: readonly EstimateRevision[],
): Omit<EstimateRevision, 'at' | 'by'> | null {
  const { tax, currency } = whole.money;
  const now = estimateAsItStands(whole);
  const newest = revisions[0];
  const same = newest && sameLines(newest.lines, now.lines) && newest.totalMinor === now.totalMinor;
  return same ? null : { ...now, tax, currency, revision: (newest?.revision ?? 0) + 1 };
}

/** For the ticket's history. */
export function writtenDown(
  { revision, totalMinor, currency }: Pick<EstimateRevision, 'revision' | 'totalMinor' | 'currency'>,
  actor: Actor,
): NewEvent {
  return { kind: 'estimate', data: { revision, total: sayMinor(totalMinor, currency) }, personId: actor.id };
}

export function estimateView(whole: Estimated, revisions: readonly EstimateRevision[]): EstimateView {
  const { tax, hourMinor } = whole.money;
  const differs = nextRevision(whole, revisions) !== null;
  return { ...estimateAsItStands(whole), tax, hourMinor, differs, revisions: [...revisions] };
}
