import { sayDay } from '../day';
import type { PartKey } from '../part-number';
import type { Bar, BarReason, Rulebook, RuleRef } from './fit-rule';
import type { Source, SourceKind } from './source';

/** How lines, parts, positions and rules are called in sentences; their keys where a name is left out. */
export interface Naming {
  readonly part?: (part: PartKey) => string;
  /** A position of a line: two lines may give one code to different places. */
  readonly position?: (position: string, line: string) => string;
  readonly line?: (line: string) => string;
  readonly rule?: (rule: RuleRef) => string;
}

/** A naming with nothing left out. */
export type FullNaming = Required<Naming>;

const KIND_WORDS: Readonly<Record<SourceKind, string>> = {
  'owners-manual': "owner's manual",
  'parts-list': 'parts list',
  'revised-parts-list': 'revised parts list',
  'service-bulletin': 'service bulletin',
  'makers-advice': "maker's written advice",
  'shop-finding': 'shop finding',
};

const BAR_WORDS: Readonly<Record<BarReason, string>> = {
  'breaks-later': 'it lets go later than the required part and puts the drive line at risk',
  'breaks-sooner': 'it lets go sooner than the required part',
  'does-not-fit': 'it does not fit',
  unsafe: 'it is not safe here',
  other: 'see the paper',
};

/** A paper as it is called in a sentence: `service bulletin SB-12 of 2 Mar 2024`. */
export function saySource({ kind, number, issued }: Pick<Source, 'kind' | 'number' | 'issued'>): string {
  return `${KIND_WORDS[kind]} ${number} of ${sayDay(issued)}`;
}

/** A bar's reason in words: the note of the paper where there is one, and whether the part ends the warranty. */
export function sayBarReason({ reason, note, voidsWarranty }: Pick<Bar, 'reason' | 'note' | 'voidsWarranty'>): string {
  return `${note === '' ? BAR_WORDS[reason] : note}${voidsWarranty ? "; it ends the maker's warranty" : ''}`;
}

/** Names rules by the papers behind them. Other names may be given; keys stand where none are. */
export function namingFor(rulebook: Pick<Rulebook, 'rules' | 'sources'>, other: Omit<Naming, 'rule'> = {}): FullNaming {
  const said = new Map(rulebook.sources.map((source) => [source.key, saySource(source)]));
  const sourceOf = new Map(rulebook.rules.map(({ key, version, source }) => [`${key} ${version}`, said.get(source)]));
  const rule = (ref: RuleRef): string => sourceOf.get(`${ref.key} ${ref.version}`) ?? `rule ${ref.key}`;
  return filledNaming({ ...other, rule });
}

/** The naming with keys where a name is left out. */
export function filledNaming({ line, part, position, rule }: Naming = {}): FullNaming {
  return {
    line: line ?? ((code) => code),
    part: part ?? ((key) => key),
    position: position ?? ((code) => code),
    rule: rule ?? (({ key }) => `rule ${key}`),
  };
}

/** Words in a row: `a`, `a and b`, `a, b and c`. */
export function listed(words: readonly string[], joint = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${joint} ${words[words.length - 1]}`;
}

/** Rules in a row, each name once. */
export function listedRules(rules: readonly RuleRef[], naming: FullNaming): string {
  return listed([...new Set(rules.map(naming.rule))]);
}
