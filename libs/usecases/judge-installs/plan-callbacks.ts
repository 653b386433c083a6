import type { HeldInstall, StandingConsequences, StandingFlag, StandingReason } from '../ports/install-store';
import { byPlace, isLate, placeKey, placesOf, standingAt, type Circumstances } from './circumstances';
import type { ReasonAdd, ReasonClosing } from './consequence-plan';
import type { JudgedInstall } from './judge-install';
import type { JudgementRecord } from './judgement-record';

/** A manager's own order for a call; it ends with the part, not with a rule. */
export const REVIEW_SOURCE = 'shop-review';

/**
 * Calls for units that are out, and reasons that no longer hold. A unit in the shop is dealt with at the bench: nothing
 * is added to its callback, and a reason ends there only when the answer itself changed.
 */
export function planCallbacks(
  judged: readonly JudgedInstall[],
  standing: StandingConsequences,
  about: Circumstances,
): { reasons: readonly ReasonAdd[]; reasonsWithdrawn: readonly ReasonClosing[] } {
  const reasonsOf = byPlace(standing.reasons);
  const flagsOf = byPlace(standing.flags);
  const reasons: ReasonAdd[] = [];
  const reasonsWithdrawn: ReasonClosing[] = [];
  for (const one of judged) {
    const { install } = one;
    const here = standingAt(reasonsOf, install);
    const wanted = callsFor(one);
    const out = install.unit.openTicketId === null;
    if (out && mayBeCalled(one, standingAt(flagsOf, install), about)) {
      reasons.push(...wanted.filter((add) => !here.some((reason) => isSameCall(reason, add))));
    }
    if (out || !about.wholeUnits) {
      const ended = here.filter((reason) => reason.live && !reason.withdrawn && !stillHolds(reason, one, wanted));
      reasonsWithdrawn.push(...ended.map((reason) => closingOf(reason, install, about)));
    }
  }
  if (about.wholeUnits) reasonsWithdrawn.push(...ofEmptyPlaces(standing.reasons, judged));
  return { reasons, reasonsWithdrawn };
}

/** One call per source whose rule asks for it. */
function callsFor({ install, verdict, record }: JudgedInstall): readonly ReasonAdd[] {
  if (record === null || !isLate(verdict)) return [];
  const { unit, positionId, place, partId } = install;
  return callsOf(record).map(({ source, action, detail }) => ({
    unitId: unit.id,
    ownerId: unit.ownerId,
    positionId,
    place,
    partId,
    source,
    verdict,
    action,
    detail,
  }));
}

type Call = Pick<ReasonAdd, 'source' | 'action' | 'detail'>;

const calls = new WeakMap<JudgementRecord, readonly Call[]>();

/** Made once for each record: all installs that share it are called about in the same words. */
function callsOf(record: JudgementRecord): readonly Call[] {
  let made = calls.get(record);
  if (made === undefined) calls.set(record, (made = makeCalls(record)));
  return made;
}

function makeCalls({ rules, required, owner: sentence }: JudgementRecord): readonly Call[] {
  const bySource = new Map<string, Call>();
  for (const { key: rule, source, action } of rules) {
    if (action !== 'call-back' && action !== 'stop-use') continue;
    if (bySource.get(source)?.action === 'stop-use') continue;
    bySource.set(source, { source, action, detail: { rule, required, sentence } });
  }
  return [...bySource.values()];
}

function mayBeCalled(one: JudgedInstall, flags: readonly StandingFlag[], about: Circumstances): boolean {
  const { install, record } = one;
  const urgent = record?.action === 'stop-use';
  const recent = install.closedOn !== null && install.closedOn >= about.lookBackFrom;
  return (urgent || recent) && !flags.some((flag) => isAccepted(flag, one, about));
}

/** A manager let this part go out knowing of the very rule. */
function isAccepted(
  flag: StandingFlag,
  { install, verdict, record }: JudgedInstall,
  { today }: Circumstances,
): boolean {
  if (flag.state !== 'accepted' || flag.partId !== install.partId || flag.verdict !== verdict) return false;
  return flag.rule === (record?.rules[0]?.key ?? null) && (flag.acceptedUntil === null || flag.acceptedUntil >= today);
}

/** The owner was called about this, or is about to be. */
function isSameCall(reason: StandingReason, add: ReasonAdd): boolean {
  return !reason.withdrawn && reason.source === add.source && reason.partId === add.partId;
}

function stillHolds(
  reason: StandingReason,
  { install, verdict }: JudgedInstall,
  wanted: readonly ReasonAdd[],
): boolean {
  if (reason.partId !== install.partId) return false;
  if (reason.source === REVIEW_SOURCE) return isLate(verdict) || verdict === 'undecided' || verdict === 'disputed';
  return wanted.some((add) => add.source === reason.source);
}

function closingOf(
  { id, callbackId, partId }: StandingReason,
  install: HeldInstall,
  { because }: Circumstances,
): ReasonClosing {
  return partId === install.partId
    ? { id, callbackId, why: because, mended: false }
    : { id, callbackId, why: 'The part was replaced.', mended: true };
}

function ofEmptyPlaces(reasons: readonly StandingReason[], judged: readonly JudgedInstall[]): readonly ReasonClosing[] {
  const seen = placesOf(judged);
  const inShop = new Set(
    judged.filter((one) => one.install.unit.openTicketId !== null).map((one) => one.install.unit.id),
  );
  return reasons
    .filter((one) => one.live && !one.withdrawn && !seen.has(placeKey(one)) && !inShop.has(one.unitId))
    .map(({ id, callbackId, place }) => ({
      id,
      callbackId,
      why: place < 0 ? 'The spares were handed back.' : 'The part was taken out.',
      mended: true,
    }));
}
