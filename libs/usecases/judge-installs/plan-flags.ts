import type { Severity } from '../../fit-rules';
import type { StandingFlag } from '../ports/install-store';
import { isDoubtful, placesOf, standingAt, type Circumstances } from './circumstances';
import type { Closing, FlagRaise } from './consequence-plan';
import type { JudgedInstall } from './judge-install';

const LOOSE_GONE = 'The part was fitted or went back to the shelf.';
const SEVERITY: Record<Severity, number> = { note: 1, caution: 3, serious: 4, urgent: 5 };

/** Flags to raise on the tickets of units in the shop, and those that have lost their ground. */
export function planFlags(
  judged: readonly JudgedInstall[],
  standing: ReadonlyMap<string, readonly StandingFlag[]>,
  about: Circumstances,
): { flags: readonly FlagRaise[]; flagsCleared: readonly Closing[] } {
  const flags: FlagRaise[] = [];
  const flagsCleared: Closing[] = [];
  for (const one of judged) {
    const { install } = one;
    const here = standingAt(standing, install).filter((flag) => flag.ticketId === install.unit.openTicketId);
    const wanted = wantedFlag(one);
    const kept = wanted !== null && here.some((flag) => answers(flag, wanted, about));
    if (!kept) {
      flagsCleared.push(...here.filter(isOurs).map(({ id }) => ({ id, why: whyCleared(one, about) })));
      if (wanted) flags.push(wanted);
    }
  }
  if (about.wholeUnits) {
    const seen = placesOf(judged);
    for (const [key, rows] of standing) {
      if (seen.has(key)) continue;
      const gone = rows.filter(isOurs);
      flagsCleared.push(
        ...gone.map(({ id, place }) => ({ id, why: place < 0 ? LOOSE_GONE : 'The part was taken out.' })),
      );
    }
  }
  return { flags, flagsCleared };
}

/** Flags of a mismatch with the picked parts belong to the recording of places. */
function isOurs(flag: StandingFlag): boolean {
  return flag.kind === 'verdict' && (flag.state === 'open' || flag.state === 'sent-back');
}

/** The flag stands already, or a manager has decided on this very matter. */
function answers(flag: StandingFlag, wanted: FlagRaise, { today }: Circumstances): boolean {
  if (flag.kind !== 'verdict' || flag.state === 'cleared') return false;
  if (flag.partId !== wanted.partId || flag.verdict !== wanted.verdict || flag.rule !== wanted.reason.rule)
    return false;
  if (flag.state === 'open') return flag.severity === wanted.severity;
  return flag.state !== 'accepted' || flag.acceptedUntil === null || flag.acceptedUntil >= today;
}

function wantedFlag({ install, verdict, record, strength }: JudgedInstall): FlagRaise | null {
  const ticketId = install.unit.openTicketId;
  if (ticketId === null || !isDoubtful(verdict) || record === null) return null;
  const { unit, positionId, place, partId } = install;
  return {
    unitId: unit.id,
    positionId,
    place,
    ticketId,
    partId,
    verdict,
    severity: SEVERITY[record.severity],
    reason: {
      kind: 'verdict',
      rule: record.rules[0]?.key ?? null,
      source: record.source ?? record.rules[0]?.source ?? null,
      required: record.required,
      barredWhy: record.barredWhy,
      action: record.action,
      sentence: record.technician,
      strength,
    },
  };
}

function whyCleared({ verdict }: JudgedInstall, { because }: Circumstances): string {
  return isDoubtful(verdict) ? `The answer changed: ${because}` : `The part is ${verdict} now: ${because}`;
}
