import { prepareShop, type PreparedShop } from '../../../../libs/build-date';
import {
  numberRulesOf,
  readRulebookDocument,
  rulebookOfDocument,
  shopDataOfDocument,
  type DocumentProblem,
  type RulebookDocument,
} from '../../../../libs/contracts';
import { namingFor, type FullNaming, type Rulebook } from '../../../../libs/fit-rules';
import type { NumberRules } from '../../../../libs/part-number';
import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { linesOfPaths } from './place-in-json';
import { readJson } from './read-json';

export type LineEntry = RulebookDocument['lines'][number];
export type PartEntry = RulebookDocument['parts'][number];

/** A line with its names ready to be looked up. */
export interface BookLine {
  readonly entry: LineEntry;
  readonly maker: NumberRules | null;
  readonly models: ReadonlySet<string>;
  readonly options: ReadonlySet<string>;
  readonly positions: ReadonlyMap<string, LineEntry['positions'][number]>;
}

/** A rulebook file, read and ready. */
export interface Book {
  readonly name: string;
  readonly document: RulebookDocument;
  readonly rulebook: Rulebook;
  readonly shop: PreparedShop;
  readonly makers: ReadonlyMap<string, NumberRules>;
  readonly lines: ReadonlyMap<string, BookLine>;
  readonly parts: ReadonlyMap<string, PartEntry>;
  /** Rules by their papers, parts by their printed numbers, positions of the line (if one is named) by their names. */
  naming(line?: string): FullNaming;
}

const MOST_PROBLEMS = 50;

/** Reads a rulebook file. What is wrong with it is refused with file, line and field, one sentence each. */
export async function readBook(path: string, around: Surroundings): Promise<Book> {
  const { name, text, value } = await readJson(path, around);
  const read = readRulebookDocument(value);
  if (!read.ok) throw new Refusal(sayProblems(read.problems, name, text));
  return bookOf(read.document, name);
}

function sayProblems(problems: readonly DocumentProblem[], name: string, text: string): string[] {
  const shown = problems.slice(0, MOST_PROBLEMS);
  const lines = linesOfPaths(
    text,
    shown.map(({ path }) => path),
  );
  const said = shown.map(({ sentence }, i) => `${name}:${lines[i]}: ${sentence}`);
  const more = problems.length - shown.length;
  return more > 0 ? [...said, `${name}: ${more} more problems.`] : said;
}

/** Makes a checked document ready. */
export function bookOf(document: RulebookDocument, name: string): Book {
  const makers = new Map(document.makers.map((maker) => [maker.code, numberRulesOf(maker)]));
  const parts = new Map(document.parts.map((part) => [part.key, part]));
  const lines = new Map(document.lines.map((entry) => [entry.code, lineOf(entry, makers)]));
  const rulebook = rulebookOfDocument(document);
  const part = (key: string): string => parts.get(key)?.number ?? key;
  const naming = (line?: string): FullNaming => {
    const positions = line === undefined ? undefined : lines.get(line)?.positions;
    return namingFor(rulebook, { part, position: (code) => positions?.get(code)?.name ?? code });
  };
  return { name, document, rulebook, shop: prepareShop(shopDataOfDocument(document)), makers, lines, parts, naming };
}

function lineOf(entry: LineEntry, makers: ReadonlyMap<string, NumberRules>): BookLine {
  return {
    entry,
    maker: makers.get(entry.maker) ?? null,
    models: new Set(entry.models.map(({ number }) => number)),
    options: new Set(entry.options.map((one) => one.code)),
    positions: new Map(entry.positions.map((one) => [one.code, one])),
  };
}
