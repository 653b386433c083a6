/**
 * Where in what came in a text stands that the database cannot keep as it is: one with a NUL, or with half of a
 * character (a lone surrogate). Answers the path, such as `unit.plate` or `lines.0.what`, empty for the whole; null where all
 * can be kept. Names of fields count as text too. It walks without calling itself, so no depth is too deep.
 */
export function unkeepableText(value: unknown): string | null {
  const left: { readonly at: string; readonly value: unknown }[] = [{ at: '', value }];
  for (let one = left.pop(); one !== undefined; one = left.pop()) {
    if (typeof one.value === 'string') {
      if (!isKeepable(one.value)) return one.at;
    } else if (typeof one.value === 'object' && one.value !== null) {
      for (const [name, inner] of Object.entries(one.value)) {
        if (!isKeepable(name)) return one.at;
        left.push({ at: one.at === '' ? name : `${one.at}.${name}`, value: inner });
      }
    }
  }
  return null;
}

/** With the flag `u` a pair is one character, so only a half that stands alone is found. */
const HALF = /\p{Surrogate}/u;

const isKeepable = (text: string): boolean => !HALF.test(text) && !text.includes('\0');
