import { parts, type Part } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** A part key as the rules write it: `MAKER/NUMBER`. */
const KEY = /^[A-Z0-9]{1,12}\/\S{1,40}$/;
const plain = (number: string): string => number.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');

/** The one part of the catalogue that a typed number means; null when there is none, or several makers have it. */
export function partMeant(typed: string, found: readonly Part[]): Part | null {
  const exact = found.filter(({ number, key }) => plain(number) === plain(typed) || key === typed);
  return exact.length === 1 ? exact[0]! : null;
}

/** Looks the numbers up in the catalogue, each once; throws one sentence for those that name no single part. */
export async function resolveParts(typed: readonly string[]): Promise<(part: string) => string> {
  const keys = new Map<string, string>();
  const unknown: string[] = [];
  for (const text of new Set(typed)) {
    const part = KEY.test(text) ? null : partMeant(text, await request(parts, 'GET', '/parts', { query: { q: text } }));
    if (KEY.test(text)) keys.set(text, text);
    else if (part) keys.set(text, part.key);
    else unknown.push(text);
  }
  if (unknown.length > 0) {
    throw new Error(
      `Not in the catalogue, or of several makers: ${unknown.join(', ')}. Write it as the maker prints it, or as MAKER/NUMBER.`,
    );
  }
  return (text) => keys.get(text) ?? text;
}
