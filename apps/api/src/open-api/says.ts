import { SetMetadata } from '@nestjs/common';

export const WORDS_KEY = 'words';

/** What a route is for, in words; media types only where they are not JSON. */
export interface RouteWords {
  /** One sentence. */
  readonly summary: string;
  /** What one must know besides; CommonMark. */
  readonly more?: string;
  /** Media type of the body it takes, such as `multipart/form-data`. */
  readonly takes?: string;
  /** Media types it answers with, such as `application/pdf`. */
  readonly answers?: readonly string[];
}

/**
 * Says in the API's description what a route does, or on a class what its routes are about. A spec wants one on every
 * route and every controller.
 */
export const Says = (summary: string, rest: Omit<RouteWords, 'summary'> = {}) =>
  SetMetadata(WORDS_KEY, { summary, ...rest } satisfies RouteWords);
