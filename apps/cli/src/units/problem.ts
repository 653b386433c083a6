/** What is wrong with one value of a row or an option: which one, and a sentence with the value and what is accepted. */
export interface ValueProblem {
  /** Column name, or the option's name without dashes; empty for the row as such. */
  readonly field: string;
  readonly sentence: string;
}

/** Collects the problems of one row, so that all of them are told at once. */
export class Problems {
  readonly all: ValueProblem[] = [];

  /** Notes a problem and gives back null, for a value that cannot be had. */
  add(field: string, sentence: string): null {
    this.all.push({ field, sentence });
    return null;
  }
}

/** Some of the names that would do, for the end of a sentence. */
export function someOf(names: Iterable<string>): string {
  const all = [...names];
  return all.length > 12 ? `${all.slice(0, 12).join(', ')} and ${all.length - 12} more` : all.join(', ');
}
