import type { FindingSeverity } from '../../../../libs/fit-rules';
import type { Book } from '../files/read-book';
import { someOf } from '../units/problem';

/** What `check-rules` tells: a finding of the audit, or a name that a rule uses and nothing bears. */
export interface NameFinding {
  readonly code: 'unknown-name';
  readonly severity: FindingSeverity;
  readonly line: string;
  readonly position: string | null;
  readonly rules: readonly { readonly key: string; readonly version: number }[];
  readonly sentence: string;
  readonly mend: string;
}

const MEND = 'Mend the name in the rule, or enter it in the line.';

/**
 * Positions, models, options and serial schemes that rules name and their line does not have: a slip of the pen makes
 * a rule speak of no unit at all. Lines that list no models or options are passed over.
 */
export function unknownNames({ rulebook, lines, document }: Book): readonly NameFinding[] {
  const schemes = new Set(document.serialSchemes.map(({ id }) => id));
  return rulebook.rules.flatMap(({ key, version, line, positions, models, options, serials }) => {
    const known = lines.get(line);
    if (!known) return [];
    const found = [
      ...strange('position', positions, known.positions),
      ...strange('model', models, known.models),
      ...strange(
        'option',
        options.map(({ option }) => option),
        known.options,
      ),
      ...strange('serial scheme', serials === null ? [] : [serials.scheme], schemes),
    ];
    return found.map((words): NameFinding => ({
      code: 'unknown-name',
      severity: 'error',
      line,
      position: null,
      rules: [{ key, version }],
      sentence: `${line}: rule ${key} names ${words}.`,
      mend: MEND,
    }));
  });
}

interface Names {
  readonly size: number;
  has(name: string): boolean;
  keys(): Iterable<string>;
}

function strange(what: string, used: readonly string[], known: Names): string[] {
  if (known.size === 0) return [];
  return used
    .filter((name) => !known.has(name))
    .map((name) => `the ${what} "${name}", which is not there; there are ${someOf(known.keys())}`);
}
