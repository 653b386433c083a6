/** A verdict's sentence without the word it begins with, for where shape and word stand beside it. */
export function withoutVerdictWord(sentence: string, verdict: string): string {
  const start = `${verdict}: `;
  if (!sentence.toLowerCase().startsWith(start)) return sentence;
  const rest = sentence.slice(start.length);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
