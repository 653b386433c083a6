import { parseDay } from '../day';
import { readRulebook } from '../fit-rules';
import { splitPartKey } from '../part-number';
import { clip, readShape, sayShape, valueAt, type ShapeProblem } from '../shape';
import { rulebookDocument, rulesPartOf, type RulebookDocument } from './rulebook-file';

/** What is wrong with a document: where it stands (a path into the JSON) and one sentence. */
export interface DocumentProblem {
  readonly path: readonly (string | number)[];
  readonly sentence: string;
}

export type ReadDocument =
  | { readonly ok: true; readonly document: RulebookDocument }
  | { readonly ok: false; readonly problems: readonly DocumentProblem[] };

/**
 * Reads a rulebook document: each entry by itself, then what ties them together (every code once; every maker, line,
 * part maker and source that is named is there; no two versions of a rule known at one instant). Names of positions,
 * models and options in rules are not refused here: the audit of a rulebook reports them.
 */
export function readRulebookDocument(json: unknown): ReadDocument {
  const read = readShape(rulebookDocument, json);
  if (!read.ok) return { ok: false, problems: read.problems.map((one) => shapeProblem(one, json)) };
  const document = read.value;
  const problems = [...twice(document), ...strangers(document), ...backwards(document), ...ofRules(document)];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, document };
}

type Path = readonly (string | number)[];

/** The lists of a document: what one entry is called, and the field that names it. */
const LISTS: Readonly<Record<string, { one: string; namedBy: string }>> = {
  makers: { one: 'maker', namedBy: 'code' },
  serialSchemes: { one: 'serial scheme', namedBy: 'id' },
  standardEditions: { one: 'standard edition', namedBy: 'standard' },
  lines: { one: 'line', namedBy: 'code' },
  parts: { one: 'part', namedBy: 'key' },
  sources: { one: 'source', namedBy: 'key' },
  rules: { one: 'rule', namedBy: 'key' },
  supersessions: { one: 'supersession', namedBy: 'from' },
};
/** Lists in which a name may stand once. Rules and sources are looked at by the rule library. */
const ONCE = ['makers', 'serialSchemes', 'lines', 'parts'] as const;

function shapeProblem(one: ShapeProblem, json: unknown): DocumentProblem {
  return { path: one.path, sentence: `${sayPath(one.path, json)}: ${sayShape(one)}` };
}

/** `rule DB-12, built.from`; `line LOAMER, positions.3.code`. */
function sayPath(path: Path, json: unknown): string {
  const [list, index, ...field] = path;
  if (list === undefined) return 'the file';
  if (typeof index !== 'number') return path.join('.');
  const { one = String(list), namedBy = '' } = LISTS[list] ?? {};
  const name = valueAt(json, [list, index, namedBy]);
  const entry = `${one} ${typeof name === 'string' && name !== '' ? clip(name) : index + 1}`;
  return field.length === 0 ? entry : `${entry}, ${field.join('.')}`;
}

function twice(document: RulebookDocument): DocumentProblem[] {
  const whole = ONCE.flatMap((list) => {
    const { one, namedBy } = LISTS[list]!;
    const names = document[list].map((entry) => String((entry as unknown as Record<string, unknown>)[namedBy]));
    return doubles(names).map((index): DocumentProblem => {
      const sentence = `${one} ${names[index]}, ${namedBy}: stands there twice; each may stand once.`;
      return { path: [list, index, namedBy], sentence };
    });
  });
  const positions = document.lines.flatMap((line, i) =>
    doubles(line.positions.map((one) => one.code)).map((index) => ({
      path: ['lines', i, 'positions', index, 'code'],
      sentence: `line ${line.code}, positions: "${line.positions[index]!.code}" stands there twice; each may stand once.`,
    })),
  );
  return [...whole, ...positions];
}

function doubles(names: readonly string[]): number[] {
  const seen = new Set<string>();
  return names.flatMap((name, index) => {
    const again = seen.has(name);
    seen.add(name);
    return again ? [index] : [];
  });
}

/** Makers and lines that are named and are not there. A document without makers or lines names whatever it likes. */
function strangers({ makers, lines, parts, serialSchemes, rules }: RulebookDocument): DocumentProblem[] {
  const known = { maker: new Set(makers.map((one) => one.code)), line: new Set(lines.map((one) => one.code)) };
  const ask = (kind: keyof typeof known, name: string, path: Path): DocumentProblem[] =>
    known[kind].size === 0 || known[kind].has(name)
      ? []
      : [
          {
            path,
            sentence: `${LISTS[path[0]!]!.one} ${Number(path[1]) + 1}, ${path[2]}: "${clip(name)}" is no ${kind} of this file.`,
          },
        ];
  return [
    ...lines.flatMap((one, i) => ask('maker', one.maker, ['lines', i, 'maker'])),
    ...parts.flatMap((one, i) => ask('maker', splitPartKey(one.key).makerCode, ['parts', i, 'key'])),
    ...serialSchemes.flatMap((one, i) => ask('maker', one.maker, ['serialSchemes', i, 'maker'])),
    ...rules.flatMap((one, i) => ask('line', one.line, ['rules', i, 'line'])),
  ];
}

function backwards({ lines }: RulebookDocument): DocumentProblem[] {
  return lines.flatMap(({ code, producedFrom, producedUntil }, i) =>
    producedUntil === null || parseDay(producedFrom)! < parseDay(producedUntil)!
      ? []
      : [
          {
            path: ['lines', i, 'producedUntil'],
            sentence: `line ${code}, producedUntil: "${producedUntil}" will not do: must be after ${producedFrom}, the first day of production.`,
          },
        ],
  );
}

/** What the rule library objects to between entries that are each in order. */
function ofRules(document: RulebookDocument): DocumentProblem[] {
  const read = readRulebook(rulesPartOf(document));
  if (read.ok) return [];
  return read.problems.map(({ place, field, message }) => {
    const [kind, ...key] = place.split(' ');
    const list = kind === 'source' ? 'sources' : 'rules';
    const all = document[list].map((one) => one.key);
    const index = all.lastIndexOf(key.join(' '));
    return { path: index === -1 ? [list] : [list, index, field], sentence: `${place}, ${field}: ${message}` };
  });
}
