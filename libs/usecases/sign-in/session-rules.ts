/** How long a sign-in lasts, in milliseconds. */
export interface SessionRules {
  /** It ends when nothing was asked for so long. */
  readonly idleMs: number;
  /** It ends after so long whatever happens. */
  readonly absoluteMs: number;
}

const MINUTE = 60_000;

/** Half an hour idle, eight hours in all: a working day. */
export const USUAL_SESSION_RULES: SessionRules = { idleMs: 30 * MINUTE, absoluteMs: 8 * 60 * MINUTE };
