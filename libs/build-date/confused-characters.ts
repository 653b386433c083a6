/** Characters that hands and scanners take for one another (common practice, no source). */
const GROUPS = ['0OQD', '1IL', '2Z', '5S', '6G', '8B', 'UV'];

const OTHERS: ReadonlyMap<string, string> = new Map(
  GROUPS.flatMap((group) => [...group].map((character) => [character, group.replace(character, '')] as const)),
);

/** The text with exactly one confused character read as another of its group, at every place and in every way. */
export function readingsWithOneChange(text: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < text.length; at++)
    for (const other of OTHERS.get(text[at]!) ?? '') found.push(text.slice(0, at) + other + text.slice(at + 1));
  return found;
}

/** The text with exactly two confused characters, at different places, read as others of their groups. */
export function readingsWithTwoChanges(text: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < text.length; at++)
    for (const other of OTHERS.get(text[at]!) ?? '')
      for (const rest of readingsWithOneChange(text.slice(at + 1))) found.push(text.slice(0, at) + other + rest);
  return found;
}
