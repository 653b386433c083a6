import { z } from 'zod';
import { lineDetail } from './catalogue';
import { rulingView } from './ruling';
import { buildDates } from './unit';

/**
 * Answer to POST /api/look-up. Without serial and evidence the possible build days are the whole production span of
 * the line, so that the rulings are what the wall chart shows.
 */
export const lookUpAnswer = z.object({
  line: lineDetail,
  buildDates,
  serialReading: z.string().nullable(),
  rulings: z.array(rulingView),
});
export type LookUpAnswer = z.infer<typeof lookUpAnswer>;
