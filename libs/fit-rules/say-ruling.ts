import { sayDay, saySet } from '../day';
import { filledNaming, listed, listedRules, sayBarReason, type FullNaming, type Naming } from './naming';
import type { Boundary, HeldBar, NotNeeded, Outcome, PieceWhere, Ruling, RulingPiece, Saying } from './ruling';

/** A ruling in sentences: what holds in each piece, whether that settles it, and what would have to be found out. */
export function sayRuling(ruling: Ruling, naming?: Naming): readonly string[] {
  const names = filledNaming(naming);
  if (ruling.pieces.length === 0) {
    return ['The evidence of the build date contradicts itself: no build date is possible, so nothing can be said.'];
  }
  const pieces = ruling.pieces.map((piece) => `${sayWhere(piece.where)}: ${sayOutcome(piece, names)}`);
  return [...pieces, ...saySettled(ruling)];
}

/** Whether the ruling is settled, and by what it is parted where it is not. */
export function saySettled({ settled, boundaries, notNeeded }: Ruling): readonly string[] {
  const needless =
    notNeeded.length === 0
      ? []
      : [
          `${capital(listed(notNeeded.map(sayNotNeeded)))} ${notNeeded.length > 1 ? 'make' : 'makes'} no difference here.`,
        ];
  if (settled) return ['Settled: one answer for every way the unit can be.', ...needless];
  if (boundaries.length === 0) return needless;
  return [`Not settled: the answer depends on ${listed(boundaries.map(sayBoundary))}.`, ...needless];
}

/** A boundary as what a person has to find out. */
export function sayBoundary(boundary: Boundary): string {
  switch (boundary.axis) {
    case 'built':
      return boundary.after === boundary.at - 1
        ? `whether it was built before ${sayDay(boundary.at)} or later`
        : `whether it was built up to ${sayDay(boundary.after)} or from ${sayDay(boundary.at)} on`;
    case 'serial':
      return `whether its serial (${boundary.scheme}) comes before ${boundary.at} or not`;
    case 'serial-scheme':
      return `whether its serial is one of ${listed(boundary.schemes, 'or')}`;
    case 'option':
      return `whether ${boundary.option} is fitted`;
    case 'model':
      return `its model (${listed(boundary.models, 'or')} or another)`;
  }
}

/** Where a piece lies, as the beginning of a sentence. */
export function sayWhere(where: PieceWhere): string {
  return capital(sayPlace(where));
}

/** Where a piece lies, in words. */
export function sayPlace({ built, ...other }: PieceWhere): string {
  const units = sayUnits(other);
  return `built ${saySet(built)}${units === '' ? '' : `, ${units}`}`;
}

/** Which units, their build date aside, in words; empty when it is every unit. */
export function sayUnits({ model, serial, options }: Omit<PieceWhere, 'built'>): string {
  const words: string[] = [];
  if (model !== null) words.push(model === 'another-model' ? 'of another model' : `model ${model.only}`);
  if (serial === 'another-scheme') words.push('with no serial of the schemes named');
  else if (serial !== null) words.push(saySerials(serial));
  for (const { option, fitted } of options) words.push(fitted ? `with ${option}` : `without ${option}`);
  return words.join(', ');
}

/** A serial span in words; its end is not included. Zeros that only pad a key to its width are not said. */
export function saySerials({ scheme, from, to }: { scheme: string; from: string | null; to: string | null }): string {
  const [first, end] = [from, to].map((key) => key?.replace(/\b0+(?=\d)/g, ''));
  if (first === undefined && end === undefined) return `any serial (${scheme})`;
  if (first === undefined) return `serials before ${end} (${scheme})`;
  return end === undefined
    ? `serials from ${first} (${scheme})`
    : `serials from ${first} up to but not ${end} (${scheme})`;
}

function sayOutcome({ outcome, grounds }: RulingPiece, naming: FullNaming): string {
  const bars = sayBars(outcome.barred, naming);
  if (outcome.kind === 'nothing-said') return ['no paper says what belongs here', ...bars].join('; ') + '.';
  if (outcome.kind === 'disputed') return [sayDispute(outcome, naming), ...bars].join('; ') + '.';
  const rules = grounds.flatMap(({ deciding }) => deciding);
  const by = rules.length === 0 ? '' : ` (by ${listedRules(rules, naming)})`;
  return [`${saySaying(outcome.saying, naming)}${by}`, ...bars].join('; ') + '.';
}

/** What a rule says, in words. */
export function saySaying({ required, allowed }: Pick<Saying, 'required' | 'allowed'>, naming: FullNaming): string {
  const parts = listed(allowed.map(naming.part));
  if (required === null) return `${parts} ${allowed.length > 1 ? 'are' : 'is'} allowed`;
  const too = allowed.length === 0 ? '' : `, ${parts} allowed too`;
  return `${naming.part(required)} is required${too}`;
}

function sayDispute(outcome: Extract<Outcome, { kind: 'disputed' }>, naming: FullNaming): string {
  if (outcome.why === 'required-and-barred') {
    const { required, rules } = outcome.sayings[0]!;
    return `disputed: ${naming.part(required!)} is required (by ${listedRules(rules, naming)}) and barred`;
  }
  const sides = outcome.sayings.map(
    (saying) => `${saySaying(saying, naming)} (by ${listedRules(saying.rules, naming)})`,
  );
  return `disputed between papers of equal standing and day: ${listed(sides)}`;
}

function sayBars(barred: readonly HeldBar[], naming: FullNaming): string[] {
  return barred.map((bar) => `never ${naming.part(bar.part)} (${naming.rule(bar.rule)}: ${sayBarReason(bar)})`);
}

function sayNotNeeded(one: NotNeeded): string {
  if (one.fact === 'option') return `whether ${one.option} is fitted`;
  return one.fact === 'build-date' ? 'the exact build date' : `the ${one.fact}`;
}

/** The text with a capital first letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
