/**
 * Input or use that cannot be worked with. Thrown where it is found and caught once, in `run`, which prints its lines
 * on stderr and ends with exit code 2.
 */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  /** One sentence each. */
  readonly lines: readonly string[];

  constructor(lines: string | readonly string[]) {
    const all = typeof lines === 'string' ? [lines] : lines;
    super(all.join('\n'));
    this.lines = all;
  }
}

/** Exit codes: all is well; the answer is 'no'; bad use or bad input. */
export const FINE = 0;
export const ANSWER_IS_NO = 1;
export const BAD_INPUT = 2;
