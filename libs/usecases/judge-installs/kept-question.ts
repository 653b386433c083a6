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
export function keptQuestion({ question }: Judgement, rulebook: LoadedRulebook): KeptQuestion {
  const { unit, position, parts, fittedOn } = question;
  return {
    unit: writeUnitFacts(unit),
    position,
    parts: [...parts],
    fittedOn: fittedOn === null ? null : formatDay(fittedOn),
    ...clocksOf(rulebook),
  };
}

type Clocks = Pick<KeptQuestion, 'today' | 'now' | 'standing'>;

const known = new WeakMap<LoadedRulebook, Clocks>();

/** The same for every question that is asked of one rulebook, and there are many. */
function clocksOf(loaded: LoadedRulebook): Clocks {
  let clocks = known.get(loaded);
  if (!clocks) {
    const { rulebook, today, now } = loaded;
    const standing = isUsual(rulebook.standing) ? {} : { standing: rulebook.standing };
    clocks = { today: formatDay(today), now: new Date(now).toISOString(), ...standing };
    known.set(loaded, clocks);
  }
  return clocks;
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
