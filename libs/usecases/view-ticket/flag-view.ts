import type { FlagView } from '../../contracts';
import type { FlagRow } from '../ports/index';

/** A flag for the page and for the manager's list. */
export function flagView(flag: FlagRow): FlagView {
  const { reason, part, decidedBy, decidedAt, decisionWhy, acceptedUntil } = flag;
  return {
    id: flag.id,
    ticket: flag.ticket,
    unit: flag.unit,
    owner: flag.owner,
    position: flag.position,
    positionName: flag.positionName,
    placeName: flag.placeName,
    verdict: flag.verdict,
    severity: flag.severity,
    part: part && { key: part.key, number: part.number, name: part.name },
    required: flag.required,
    sentence: reason.sentence,
    source: reason.source,
    strength: reason.strength,
    state: flag.state,
    openedAt: flag.openedAt,
    decision: decisionWhy === null ? null : { by: decidedBy, at: decidedAt, why: decisionWhy, until: acceptedUntil },
    version: flag.version,
  };
}
