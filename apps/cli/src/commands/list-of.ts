import { InvalidArgumentError } from 'commander';

/** Reads an option that lists some of the accepted words, joined by commas. */
export function listOf<T extends string>(accepted: readonly T[]): (text: string) => readonly T[] {
  return (text) => {
    const words = text.split(',').map((word) => word.trim());
    const strange = words.find((word) => !(accepted as readonly string[]).includes(word));
    if (strange !== undefined) throw new InvalidArgumentError(`"${strange}" is none of ${accepted.join(', ')}.`);
    return words as T[];
  };
}

/** Collects an option that may be given several times. */
export function collect(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value];
}
