import { problem, type Problem } from '../../../../libs/contracts';

/** A refused request, or one that found nobody at the other end (`type` is then `no-connection`). */
export class ApiProblem extends Error {
  constructor(
    readonly problem: Problem,
    cause?: unknown,
  ) {
    super(problem.detail, { cause });
    this.name = 'ApiProblem';
  }
}

/** Reads the body of a refused request; a body that is no problem document still gives one clear sentence. */
export function readProblem(status: number, body: unknown): Problem {
  const parsed = problem.safeParse(body);
  if (parsed.success) return parsed.data;
  return {
    type: status === 401 ? 'not-signed-in' : 'unexpected-answer',
    title: 'Not done',
    status,
    detail: `The shop's server answered with status ${status} and no reason. Try again.`,
  };
}

/** No answer at all: cable, wireless or server. What was typed is kept on the page. */
export const NO_CONNECTION: Problem = {
  type: 'no-connection',
  title: 'No connection',
  status: 0,
  detail: "The shop's server does not answer. What you typed is still here; try again when the connection is back.",
};

/** The answer has another shape than this page knows: it was opened before the server was renewed. */
export const OTHER_AGE: Problem = {
  type: 'other-age',
  title: 'Reload the page',
  status: 200,
  detail: "This page is older or newer than the shop's server. Reload it; what you typed into a form is kept.",
};

/** The one sentence to show for anything that was thrown. */
export function sentenceOf(error: unknown): string {
  if (error instanceof ApiProblem) return error.problem.detail;
  return error instanceof Error ? error.message : 'Something did not work. Try again.';
}

/** True when the password was right and the code of a second factor is asked for. */
export function isCodeNeeded(error: unknown): boolean {
  return error instanceof ApiProblem && error.problem.type === 'code-needed';
}

/** True when somebody else changed the thing first (status 412). */
export function isStale(error: unknown): boolean {
  return error instanceof ApiProblem && error.problem.status === 412;
}
