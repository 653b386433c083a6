import { day, formatDay } from '../../day';
import {
  createJudge,
  unitFromFile,
  usualStanding,
  writeUnitFacts,
  type Judgement,
  type Rulebook,
  type Standing,
  type UnitFactsFile,
} from '../../fit-rules';
import type { LoadedRulebook } from '../rulebook';

/**
 * What a verdict was asked with. No version of a rule is ever overwritten, so the question and its two clocks are enough
 * to give the same verdict again from the rulebook of any later day.
 */
export interface KeptQuestion {
  readonly unit: UnitFactsFile;
  readonly position: string;
  readonly parts: readonly string[];
  /** Days `YYYY-MM-DD`. */
  readonly fittedOn: string | null;
  readonly today: string;
  /** ISO 8601, as known then. */
  readonly now: string;
  /** Kept only where the shop had set its own; a standing has no versions. */
  readonly standing?: Standing;
}

/** The question behind a judgement, ready to be kept with it. */
export function keptQuestion({ question }: Judgement, { rulebook, today, now }: LoadedRulebook): KeptQuestion {
  const { unit, position, parts, fittedOn } = question;
  return {
    unit: writeUnitFacts(unit),
    position,
    parts: [...parts],
    fittedOn: fittedOn === null ? null : formatDay(fittedOn),
    today: formatDay(today),
    now: new Date(now).toISOString(),
    ...(isUsual(rulebook.standing) ? {} : { standing: rulebook.standing }),
  };
}

/** Judges a kept question again, by the papers and the knowledge of then, from a rulebook that may have grown since. */
export function judgeAgain(kept: KeptQuestion, grown: Rulebook): Judgement {
  const rulebook = { ...grown, standing: kept.standing ?? usualStanding };
  const judge = createJudge(rulebook, { today: day(kept.today), now: Date.parse(kept.now) });
  const { position, parts, fittedOn } = kept;
  const unit = unitFromFile(kept.unit);
  return judge.judge({ unit, position, parts, fittedOn: fittedOn === null ? null : day(fittedOn) });
}

function isUsual(standing: Standing): boolean {
  return Object.entries(usualStanding).every(([kind, weight]) => standing[kind as keyof Standing] === weight);
}
