import type { RulebookDocument } from '../../contracts';
import { alike } from '../import-sheet/kind-work';

type List = 'makers' | 'serialSchemes' | 'standardEditions' | 'lines' | 'parts' | 'sources' | 'rules' | 'supersessions';

/** How many entries of each list would be added, changed, and are there already. */
export type DocumentCounts = Record<List, { added: number; changed: number; same: number }>;

export interface DocumentChanges {
  readonly counts: DocumentCounts;
  /** What on record would have to be overwritten, a sentence each. */
  readonly conflicts: readonly string[];
  /** What the file brings that is only ever added to. */
  readonly added: Pick<RulebookDocument, 'sources' | 'rules' | 'supersessions'> & {
    readonly standing: RulebookDocument['standing'] | null;
  };
  /** Catalogue entries that are new or changed. */
  readonly document: RulebookDocument;
}

/** Compares a file with what the shop holds, entry by entry. */
export function compareDocuments(kept: RulebookDocument, file: RulebookDocument): DocumentChanges {
  const counts = {} as DocumentCounts;
  const conflicts: string[] = [];
  const differing = <T>(list: List, keyOf: (one: T) => string, record: boolean): T[] => {
    const known = new Map((kept[list] as T[]).map((one) => [keyOf(one), one]));
    const count = { added: 0, changed: 0, same: 0 };
    const differ = (file[list] as T[]).filter((one) => {
      const before = known.get(keyOf(one));
      if (before === undefined) count.added++;
      else if (alike(comparable(before), comparable(one))) count.same++;
      else if (record)
        conflicts.push(
          `${SAYS[list]} ${keyOf(one)} is on file and says otherwise; what is on record is not overwritten.`,
        );
      else count.changed++;
      return before === undefined || (!record && !alike(comparable(before), comparable(one)));
    });
    counts[list] = count;
    return differ;
  };
  const document = {
    ...file,
    makers: differing<RulebookDocument['makers'][number]>('makers', ({ code }) => code, false),
    serialSchemes: differing<RulebookDocument['serialSchemes'][number]>('serialSchemes', ({ id }) => id, false),
    standardEditions: differing<RulebookDocument['standardEditions'][number]>(
      'standardEditions',
      ({ standard, edition }) => `${standard} ${edition}`,
      false,
    ),
    lines: differing<RulebookDocument['lines'][number]>('lines', ({ code }) => code, false),
    parts: differing<RulebookDocument['parts'][number]>('parts', ({ key }) => key, false),
  };
  const added = {
    sources: differing<RulebookDocument['sources'][number]>('sources', ({ key }) => key, true),
    rules: differing<RulebookDocument['rules'][number]>(
      'rules',
      ({ key, version }) => `${key} version ${version}`,
      true,
    ),
    supersessions: differing<RulebookDocument['supersessions'][number]>(
      'supersessions',
      ({ from, to, known }) => `${from} to ${to ?? 'nothing'} from ${known.from ?? 'ever'}`,
      true,
    ),
    standing: alike(kept.standing, file.standing) ? null : file.standing,
  };
  return { counts, conflicts: [...conflicts, ...unread(kept, document), ...strangers(kept, file)], added, document };
}

/** Models of a line have no order that says anything. */
function comparable<T>(one: T): T {
  const { models } = one as { readonly models?: readonly (string | { readonly number: string })[] };
  if (!models) return one;
  const numberOf = (model: (typeof models)[number]) => (typeof model === 'string' ? '' : model.number);
  return {
    ...one,
    models: [...models].sort((a, b) => (numberOf(a) < numberOf(b) ? -1 : numberOf(a) > numberOf(b) ? 1 : 0)),
  };
}

const SAYS: Readonly<Record<List, string>> = {
  makers: 'Maker',
  serialSchemes: 'Serial scheme',
  standardEditions: 'Edition',
  lines: 'Line',
  parts: 'Part',
  sources: 'Paper',
  rules: 'Rule',
  supersessions: 'Supersession',
};

/** What the file names and neither it nor the shop has. */
function strangers(kept: RulebookDocument, file: RulebookDocument): string[] {
  const makers = new Set([...kept.makers, ...file.makers].map(({ code }) => code));
  const lines = new Set([...kept.lines, ...file.lines].map(({ code }) => code));
  const noMaker = (what: string, code: string) =>
    makers.has(code) ? [] : [`${what} names maker ${code}, who is not on file and not in the file.`];
  return [
    ...file.parts.flatMap(({ key }) => noMaker(`Part ${key}`, key.slice(0, key.indexOf('/')))),
    ...file.lines.flatMap(({ code, maker }) => noMaker(`Line ${code}`, maker)),
    ...file.serialSchemes.flatMap(({ name, maker }) => noMaker(`Serial scheme ${name}`, maker)),
    ...file.rules.flatMap(({ key, line }) =>
      lines.has(line) ? [] : [`Rule ${key} names line ${line}, which is not on file and not in the file.`],
    ),
  ];
}

/** Changes of the catalogue that would leave what is recorded without its place, or under another name. */
function unread(kept: RulebookDocument, { makers, lines }: Pick<RulebookDocument, 'makers' | 'lines'>): string[] {
  const rules = makers.flatMap(({ code, numberRules }) => {
    const before = kept.makers.find((one) => one.code === code);
    if (!before || alike(before.numberRules, numberRules) || !kept.parts.some(({ key }) => key.startsWith(`${code}/`)))
      return [];
    return [`Maker ${code} has parts on file that were read by other number rules; the rules stay as they are.`];
  });
  const places = lines.flatMap((line) => {
    const before = kept.lines.find(({ code }) => code === line.code);
    if (!before) return [];
    if (before.maker !== line.maker)
      return [`Line ${line.code} belongs to maker ${before.maker} on file, and stays there.`];
    return before.positions.flatMap(({ code, places: had }) => {
      const now = line.positions.find((one) => one.code === code);
      if (now && now.places.length < had.length)
        return [`Position ${code} of ${line.code} has ${had.length} places on file; it cannot have fewer.`];
      return [];
    });
  });
  return [...rules, ...places];
}
