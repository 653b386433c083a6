import { day, formatDay } from '../../day';
import {
  createJudge,
  unitFromFile,
  usualStanding,
  writeUnitFacts,
  type Judgement,
  type Rulebook,
  type Standing,
} from '../../fit-rules';
import type { LoadedRulebook } from '../rulebook';
import type { KeptQuestion } from './question-record';

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
