import { sayDay } from '../day';
import type { PartKey } from '../part-number';
import type { Action, RuleRef } from './fit-rule';
import { filledNaming, listed, listedRules, sayBarReason, type FullNaming, type Naming } from './naming';
import type { Saying } from './ruling';
import { sayBoundary } from './say-ruling';
import type { Judgement } from './verdict';

/** One verdict, once for the bench and once for the owner. */
export interface VerdictWords {
  readonly technician: string;
  readonly owner: string;
}

/** How a part is held that is in no place of the unit: on the bench for it, or by its owner as a spare. */
export interface HeldLoose {
  readonly as: 'picked' | 'spare';
  /** Pieces. */
  readonly quantity: number;
}

/** The verdict in words. The same judgement always gives the same words. */
export function sayVerdict(judgement: Judgement, naming?: Naming, loose: HeldLoose | null = null): VerdictWords {
  const names = filledNaming(naming);
  const technician = forTechnician(judgement, names, loose);
  if (loose === null) return { technician, owner: forOwner(judgement, names) };
  return { technician: `${sayHeld(loose)}. ${technician}`, owner: sparesForOwner(judgement, names, loose) };
}

function sayHeld({ as, quantity }: HeldLoose): string {
  if (as === 'picked') return `Picked and not fitted yet (${quantity})`;
  return quantity === 1 ? 'A spare' : `${quantity} spares`;
}

function forTechnician(judgement: Judgement, naming: FullNaming, loose: HeldLoose | null): string {
  const { verdict, candidates } = judgement;
  const part = listed(
    candidates.map((one) => naming.part(one.part)),
    'or',
  );
  const needed = sayNeeded(judgement, naming);
  switch (verdict) {
    case 'right':
      return `Right: ${part} is what belongs here${sayBy(judgement, naming)}.`;
    case 'allowed':
      return `Allowed: ${part} may be fitted here${sayBy(judgement, naming)}.${needed}`;
    case 'outdated':
      return `Outdated: ${part} was ${goodThen(judgement)} ${sayFitted(judgement, loose)} and no longer is.${sayBarred(judgement, naming)}${needed}${sayAction(judgement.action)}`;
    case 'wrong':
      return `Wrong: ${part} does not belong here.${sayBarred(judgement, naming)}${needed}${sayKnown(judgement)}${sayAction(judgement.action)}`;
    case 'disputed':
      return `Disputed: the papers do not agree on ${part}${sayBy(judgement, naming)}. Fit nothing in doubt; ask the maker.`;
    case 'undecided':
      return `Undecided: ${whyUndecided(judgement, naming)}`;
  }
}

function sayBy({ deciding }: Judgement, naming: FullNaming): string {
  return deciding.length === 0 ? '' : ` by ${listedRules(deciding, naming)}`;
}

/** Every part that some piece requires, and by which papers; where parts are only allowed, those. */
function sayNeeded({ ruling }: Judgement, naming: FullNaming): string {
  const decided = ruling.pieces.flatMap(({ outcome, grounds }) =>
    outcome.kind === 'decided' ? [{ ...outcome.saying, by: grounds.flatMap(({ deciding }) => deciding) }] : [],
  );
  const requiring = decided.filter(({ required }) => required !== null);
  if (requiring.length > 0) return sayParts('Required', requiring, ({ required }) => [required!], naming);
  return decided.length > 0 ? sayParts('Allowed', decided, ({ allowed }) => allowed, naming) : '';
}

interface DecidedSaying extends Saying {
  readonly by: readonly RuleRef[];
}

function sayParts(
  word: string,
  sayings: readonly DecidedSaying[],
  partsOf: (saying: DecidedSaying) => readonly PartKey[],
  naming: FullNaming,
): string {
  const parts = [...new Set(sayings.flatMap(partsOf).map(naming.part))];
  const by = listedRules(
    sayings.flatMap((saying) => saying.by),
    naming,
  );
  return ` ${word}: ${listed(parts, 'or')} (${by}).`;
}

function goodThen({ candidates }: Judgement): string {
  return candidates.every(({ then }) => then === 'right') ? 'right' : 'allowed';
}

function sayFitted({ question: { fittedOn } }: Judgement, loose: HeldLoose | null): string {
  const done = loose === null ? 'fitted' : 'picked';
  return fittedOn === null ? 'when the unit was built' : `when it was ${done} on ${sayDay(fittedOn)}`;
}

function sayBarred({ bars }: Judgement, naming: FullNaming): string {
  return bars.map((bar) => ` Barred by ${naming.rule(bar.rule)}: ${sayBarReason(bar)}.`).join('');
}

function sayKnown({ couldHaveKnown }: Judgement): string {
  if (couldHaveKnown === null) return '';
  return couldHaveKnown
    ? ' The papers the shop held on the day of fitting said so.'
    : ' The papers the shop held on the day of fitting did not say so.';
}

const ACTION_WORDS: Readonly<Record<Action, string>> = {
  nothing: '',
  'next-service': ' Change it at the next service.',
  'call-back': ' Call the owner back to have it changed.',
  'stop-use': ' Stop use until it is changed.',
};

function sayAction(action: Action): string {
  return ACTION_WORDS[action];
}

function whyUndecided({ candidates, question, ruling }: Judgement, naming: FullNaming): string {
  if (ruling.pieces.length === 0) return 'the evidence of the build date contradicts itself.';
  if (candidates.length === 0) return `no part is told for ${naming.position(question.position, question.unit.line)}.`;
  if (candidates.length > 1) {
    const each = candidates.map(({ part, verdict }) => `${naming.part(part)} would be ${verdict}`);
    return `its marks fit several parts: ${listed(each)}.`;
  }
  const pieces = candidates[0]!.pieces;
  const part = naming.part(candidates[0]!.part);
  if (pieces.every(({ outcome }) => outcome === 'nothing-said'))
    return `no paper says what belongs here, so ${part} cannot be judged.`;
  if (ruling.boundaries.length === 0) return `the papers speak of ${part} for some of the ways this unit can be only.`;
  return `${part} is right or not depending on ${listed(ruling.boundaries.map(sayBoundary))}.`;
}

const OWNER_ACTION_WORDS: Readonly<Record<Action, string>> = {
  nothing: '',
  'next-service': ' It can be changed at the next service.',
  'call-back': ' Please bring the unit in to have it changed.',
  'stop-use': ' Please do not use the unit until it has been changed.',
};

function forOwner(judgement: Judgement, naming: FullNaming): string {
  const { position, unit } = judgement.question;
  const place = naming.position(position, unit.line);
  const action = OWNER_ACTION_WORDS[judgement.action];
  switch (judgement.verdict) {
    case 'right':
      return `The part fitted at ${place} is the one the papers ask for.`;
    case 'allowed':
      return `The part fitted at ${place} is one that the papers allow.`;
    case 'outdated':
      return `The part fitted at ${place} was good when it was fitted; newer papers ask for another.${action}`;
    case 'wrong':
      return `The part fitted at ${place} is not the one that belongs there.${action}`;
    case 'disputed':
      return `The papers do not agree on the part fitted at ${place}; the maker has to be asked.`;
    case 'undecided':
      return `It is not certain yet whether the part fitted at ${place} is the one that belongs there.`;
  }
}

const NUMBERS = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const SPARES_ACTION_WORDS: Readonly<Record<Action, string>> = {
  nothing: '',
  'next-service': ' We change them for the right ones at the next service.',
  'call-back': ' Please do not fit them; bring them along and we change them.',
  'stop-use': ' Please do not fit them on any account; bring them in and we change them.',
};

/** Spares by the kind of part the position takes: "the two spare pins you have for Auger pin". */
function sparesForOwner(judgement: Judgement, naming: FullNaming, { quantity }: HeldLoose): string {
  const place = naming.position(judgement.question.position, judgement.question.unit.line);
  const count = quantity === 1 ? '' : `${NUMBERS[quantity] ?? quantity} `;
  const them = `The ${count}spare ${kindOf(place, quantity)} you have for ${place}`;
  const are = quantity === 1 ? 'is' : 'are';
  const action =
    quantity === 1 ? singular(SPARES_ACTION_WORDS[judgement.action]) : SPARES_ACTION_WORDS[judgement.action];
  switch (judgement.verdict) {
    case 'right':
    case 'allowed':
      return `${them} may be fitted.`;
    case 'outdated':
      return `${them} ${are} no longer right; newer papers ask for another.${action}`;
    case 'wrong':
      return `${them} ${are} not right for this unit.${action}`;
    default:
      return `It is not certain yet whether ${them.charAt(0).toLowerCase()}${them.slice(1)} may be fitted.`;
  }
}

/** The last word of the position's name where it is a plain one, such as pin, bolt or belt. */
function kindOf(place: string, quantity: number): string {
  const last = /([a-z]+)$/i.exec(place.trim())?.[1]?.toLowerCase() ?? 'part';
  if (quantity === 1) return last;
  return /(?:s|x|ch|sh)$/.test(last) ? `${last}es` : `${last}s`;
}

const singular = (words: string): string => words.replace(/\bthem\b/g, 'it').replace('the right ones', 'the right one');

/** What is said of spares to an owner who has just heard of the same trouble with the part in the unit. */
export function saySparesToo(sentence: string): string {
  return sentence.replace(' you have for ', ' you have, too, for ');
}
