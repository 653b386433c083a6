import type { HeldInstall, StandingConsequences } from '../ports/install-store';
import type { JudgedInstall } from './judge-install';
import type { ConsequencePlan, VerdictWrite } from './consequence-plan';
import type { JudgementRecord } from './judgement-record';
import { planCallbacks } from './plan-callbacks';
import { planFlags } from './plan-flags';
import { planNotes } from './plan-notes';
import { byPlace, type Circumstances } from './circumstances';

/**
 * What follows from judging: compared with what stands already, only the difference. Judging the same twice therefore
 * plans nothing the second time.
 */
export function planConsequences(
  judged: readonly JudgedInstall[],
  standing: StandingConsequences,
  about: Circumstances,
): ConsequencePlan {
  const flags = planFlags(judged, byPlace(standing.flags), about);
  const callbacks = planCallbacks(judged, standing, about);
  const notes = planNotes(judged, byPlace(standing.notes), about);
  const verdicts = judged.filter(isToWrite).map(verdictWrite);
  return {
    judged: judged.length,
    verdicts,
    confirmed: about.wholeUnits ? judged.filter((one) => !isToWrite(one)).map(({ install }) => placeOf(install)) : [],
    ...flags,
    ...callbacks,
    ...notes,
  };
}

function isToWrite({ install, verdict, record }: JudgedInstall): boolean {
  return record !== null && (verdict !== install.verdict || !sameGrounds(install, record));
}

/** Written out field by field, as there may be a hundred thousand. */
function verdictWrite({ install, verdict, record }: JudgedInstall): VerdictWrite {
  const { unit, positionId, place, ticketId, partId } = install;
  return {
    unitId: unit.id,
    positionId,
    place,
    ticketId,
    partId,
    from: install.verdict,
    to: verdict,
    judgement: record!,
  };
}

/** The answer rests on the same rules, asks for the same and is as bad; the wording follows from those. */
function sameGrounds({ judgement }: HeldInstall, now: JudgementRecord): boolean {
  return judgement !== null && groundsOf(judgement) === groundsOf(now);
}

const grounds = new WeakMap<JudgementRecord, string>();

/** As a text, made once for each record: many installs share one. */
function groundsOf(record: JudgementRecord): string {
  let text = grounds.get(record);
  if (text === undefined) {
    const { action, rules, required, barredWhy, couldHaveKnown, severity } = record;
    const versions = rules.map(({ key, version }) => [key, version]);
    text = JSON.stringify([action, versions, required, barredWhy, couldHaveKnown, severity]);
    grounds.set(record, text);
  }
  return text;
}

function placeOf(install: HeldInstall): { unitId: number; positionId: number; place: number } {
  return { unitId: install.unit.id, positionId: install.positionId, place: install.place };
}
