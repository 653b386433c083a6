/** Tells whoever started the tests something they should know, on stderr and past Jest's own console. */
export function say(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}
