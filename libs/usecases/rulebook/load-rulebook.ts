import type { Day } from '../../day';
import { STARTING_THRESHOLD, thresholdSchema, type Threshold } from '../../fastener';
import {
  createJudge,
  namingFor,
  readRulebook,
  type FitRule,
  type FullNaming,
  type Judge,
  type Rulebook,
  type RulebookFile,
  type RuleRef,
  type Source,
} from '../../fit-rules';
import type { Clock } from '../clock';
import { NO_SHAPES, type CatalogueShapes } from '../ports/catalogue-store';
import { STRENGTH_THRESHOLD } from '../ports/session-store';
import type { RevisionMark } from '../ports/rulebook-store';
import type { Tables } from '../ports/store';
import { catalogueNames } from './catalogue-names';
import { Strengths } from './strengths';

/** The rulebook of one revision, ready to judge by the papers of one day. */
export interface LoadedRulebook {
  readonly revision: number;
  readonly today: Day;
  /** Epoch milliseconds by the database's clock; every rule of this revision is known by then. */
  readonly now: number;
  readonly rulebook: Rulebook;
  readonly judge: Judge;
  readonly sources: ReadonlyMap<string, Source>;
  /** Rules by their papers, parts by their numbers, lines and positions by their names. */
  readonly naming: FullNaming;
  /** How strong parts are and what their makers print on them, as of the loading. */
  readonly shapes: CatalogueShapes;
  readonly strengths: Strengths;
  ruleOf(ref: RuleRef): FitRule | undefined;
}

/** The one that stands and the one before: what is under way when a bulletin comes ends by the old one. Each takes tens of megabytes. */
const MOST_KEPT = 2;
const kept = new Map<string, Kept>();

interface Kept {
  readonly stamp: string;
  readonly loaded: LoadedRulebook;
}

/**
 * The rulebook as it stands, loaded once per revision and day. Called in a transaction that writes verdicts, it also
 * holds the rulebook still until that transaction ends, so that nothing is judged by papers that are already replaced.
 */
export async function loadRulebook(tables: Tables, clock: Clock): Promise<LoadedRulebook> {
  const mark = await tables.rulebook.share();
  return rulebookAt(tables, mark, clock.today(), await strengthThreshold(tables));
}

/** The rulebook of a mark that was just read; nothing is asked where it was loaded before. */
export async function rulebookAt(
  tables: Tables,
  mark: RevisionMark,
  today: Day,
  threshold: Threshold,
): Promise<LoadedRulebook> {
  const name = JSON.stringify([mark.stamp, today, threshold]);
  const found = kept.get(name)?.loaded;
  if (found) return found;
  const loaded = makeRulebook(await readStored(tables, mark), mark, today, await tables.catalogue.shapes(), threshold);
  if (mark.revision > 0) keep(name, { stamp: mark.stamp, loaded });
  return loaded;
}

/** Makes a rulebook ready to judge; also one that was never published, for "what if". */
export function makeRulebook(
  rulebook: Rulebook,
  { revision, now }: Pick<RevisionMark, 'revision' | 'now'>,
  today: Day,
  shapes: CatalogueShapes = NO_SHAPES,
  threshold: Threshold = STARTING_THRESHOLD,
): LoadedRulebook {
  const rules = new Map(rulebook.rules.map((rule) => [`${rule.key} ${rule.version}`, rule]));
  return {
    revision,
    today,
    now,
    rulebook,
    judge: createJudge(rulebook, { today, now }),
    naming: namingFor(rulebook, catalogueNames(shapes)),
    shapes,
    strengths: new Strengths(shapes, threshold),
    sources: new Map(rulebook.sources.map((source) => [source.key, source])),
    ruleOf: ({ key, version }) => rules.get(`${key} ${version}`),
  };
}

/** From which ratio of torque on a part breaks sooner or later, by the shop's setting; 15 % either way when it has none. */
export async function strengthThreshold(tables: Tables): Promise<Threshold> {
  return thresholdOf(await tables.settings.read(STRENGTH_THRESHOLD));
}

/** The same from the setting as it is kept. */
export function thresholdOf(setting: unknown): Threshold {
  const set = thresholdSchema.safeParse(setting);
  return set.success ? set.data : STARTING_THRESHOLD;
}

/** A bulletin changes few rules of many: what was read for an earlier revision is taken over. */
async function readStored(tables: Tables, mark: RevisionMark): Promise<Rulebook> {
  const earlier = [...kept.values()].reverse().find(({ loaded }) => loaded.revision <= mark.revision);
  const since = earlier && (await tables.rulebook.loadSince({ ...earlier, revision: earlier.loaded.revision }));
  if (!since) return checked(await tables.rulebook.load());
  const { rules, ...rest } = checked(since);
  const all = new Map(earlier.loaded.rulebook.rules.map((rule) => [`${rule.key} ${rule.version}`, rule]));
  for (const rule of rules) all.set(`${rule.key} ${rule.version}`, rule);
  return { ...rest, rules: [...all.values()].sort((a, b) => byText(a.key, b.key) || a.version - b.version) };
}

function checked(file: RulebookFile): Rulebook {
  const read = readRulebook(file);
  if (read.ok) return read.value;
  throw new Error(`the stored rulebook cannot be read: ${read.problems.map((one) => one.message).join(' ')}`);
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function keep(name: string, one: Kept): void {
  kept.set(name, one);
  for (const oldest of kept.keys()) {
    if (kept.size <= MOST_KEPT) return;
    kept.delete(oldest);
  }
}
