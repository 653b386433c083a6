import type { Problem } from '../../../../libs/contracts';

/** A refusal on its way to the client, with the status the edge has chosen for it. */
export class ProblemError extends Error {
  constructor(
    readonly status: number,
    readonly type: string,
    detail: string,
    readonly more: Partial<Pick<Problem, 'field' | 'missing' | 'current'>> = {},
    readonly headers: Readonly<Record<string, string>> = {},
  ) {
    super(detail);
  }
}
