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
import type { HeldInstall } from '../ports/install-store';
import type { AskedAt, KeptQuestion } from './question-record';

/** The question behind the judgement that an install keeps; null where none is kept, or it was kept before questions were. */
export function keptQuestion({ judgement, judgedAs, position, parts, fittedOn }: HeldInstall): KeptQuestion | null {
  if (!judgement?.asked || judgedAs === null) return null;
  return {
    unit: writeUnitFacts(judgedAs),
    position,
    parts: [...parts],
    fittedOn: fittedOn === null ? null : formatDay(fittedOn),
    ...judgement.asked,
  };
}

const known = new WeakMap<LoadedRulebook, AskedAt>();

/** The same for every question that is asked of one rulebook, and there are many. */
export function askedAt(loaded: LoadedRulebook): AskedAt {
  let asked = known.get(loaded);
  if (!asked) {
    const { rulebook, today, now } = loaded;
    const standing = isUsual(rulebook.standing) ? {} : { standing: rulebook.standing };
    asked = { today: formatDay(today), now: new Date(now).toISOString(), ...standing };
    known.set(loaded, asked);
  }
  return asked;
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
