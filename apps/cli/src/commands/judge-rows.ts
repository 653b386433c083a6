import {
  CAME_WITH_UNIT,
  createJudge,
  sayVerdict,
  verdicts,
  type FullNaming,
  type Judge,
  type Judgement,
  type Verdict,
} from '../../../../libs/fit-rules';
import type { Book } from '../files/read-book';
import { questionOf, type Install } from '../units/read-install';
import type { Clock } from './clock';

/** What stands beside each row of the answer, in this order. */
export const RESULT_COLUMNS = ['verdict', 'required', 'rule', 'source', 'action', 'could_have_known', 'says'] as const;
export type RowResult = Readonly<Record<(typeof RESULT_COLUMNS)[number], string | null | undefined>> & {
  readonly verdict: Verdict;
};

/** The columns of an answer without reasons. */
export const BARE_COLUMNS = ['verdict'] as const;

/** For which rows the reasons are worked out too: those that are neither right nor allowed, every row, or none. */
export const REASONS = ['doubtful', 'all', 'none'] as const;
export type Reasons = (typeof REASONS)[number];

/** Judges installs one by one: verdicts on the fast path, reasons only where they are asked for. */
export class RowJudge {
  private readonly judge: Judge;
  private readonly plainSlots = new Map<string, number>();
  private readonly names = new Map<string, FullNaming>();
  private readonly sourceOf: ReadonlyMap<string, string>;

  constructor(
    private readonly book: Book,
    { inForceOn, knownAt }: Clock,
    private readonly reasons: Reasons,
  ) {
    this.judge = createJudge(book.rulebook, { today: inForceOn, now: knownAt });
    this.sourceOf = new Map(book.rulebook.rules.map(({ key, version, source }) => [`${key} ${version}`, source]));
  }

  /** The verdict of one install, with its reasons where they are asked for. */
  result(install: Install): RowResult {
    const verdict = this.verdict(install);
    const good = verdict === 'right' || verdict === 'allowed';
    if (this.reasons === 'none') return { verdict, ...NOT_ASKED_FOR };
    if (this.reasons === 'doubtful' && good) return { verdict, ...NO_REASONS };
    return this.explained(this.judge.judge(questionOf(install)), install.unit.line);
  }

  private verdict({ unit, position, parts, fittedOn }: Install): Verdict {
    const { bulk } = this.judge;
    const plain = this.plainSlot(unit.line, position);
    const slot = plain === -1 ? bulk.slotOf(unit.facts(), position) : plain;
    const numbers = parts.map((part) => bulk.partIndex(part));
    return verdicts[bulk.verdictCodeOfSet(slot, numbers, unit.built, fittedOn ?? CAME_WITH_UNIT)]!;
  }

  /** The slot of all units of a line alike, or -1: most positions need neither model, option nor serial. */
  private plainSlot(line: string, position: string): number {
    const name = `${line}\n${position}`;
    let slot = this.plainSlots.get(name);
    if (slot === undefined) this.plainSlots.set(name, (slot = this.judge.bulk.plainSlotOf(line, position)));
    return slot;
  }

  private explained(judgement: Judgement, line: string): RowResult {
    const { verdict, ruling, deciding, action, couldHaveKnown } = judgement;
    let naming = this.names.get(line);
    if (!naming) this.names.set(line, (naming = this.book.naming(line)));
    const required = ruling.pieces.flatMap(({ outcome }) =>
      outcome.kind === 'decided' && outcome.saying.required !== null ? [naming.part(outcome.saying.required)] : [],
    );
    return {
      verdict,
      required: once(required),
      rule: once(deciding.map(({ key }) => key)),
      source: once(deciding.map(({ key, version }) => this.sourceOf.get(`${key} ${version}`) ?? '')),
      action,
      could_have_known: couldHaveKnown === null ? null : couldHaveKnown ? 'yes' : 'no',
      says: sayVerdict(judgement, naming).technician,
    };
  }
}

/** Takes the results of an earlier run out of a row, too. */
const NOT_ASKED_FOR = {
  required: undefined,
  rule: undefined,
  source: undefined,
  action: undefined,
  could_have_known: undefined,
  says: undefined,
};
const NO_REASONS = { required: null, rule: null, source: null, action: null, could_have_known: null, says: null };

/** Each text once, joined by `|`. */
function once(all: readonly string[]): string {
  return [...new Set(all)].join('|');
}
