import { capital } from './say';

/** A verdict's sentence without the word it begins with, for where shape and word stand beside it. */
export function withoutVerdictWord(sentence: string, verdict: string): string {
  const start = `${verdict}: `;
  if (!sentence.toLowerCase().startsWith(start)) return sentence;
  return capital(sentence.slice(start.length));
}
