import { z } from 'zod';
import { position } from './catalogue';
import { dayText } from './common';
import { rulingView } from './ruling';
import { buildDates } from './unit';

/** What POST /api/look-up answers: the possible build days, and per position asked about its ruling. */
export const lookUpAnswer = z.object({
  line: z.object({ code: z.string(), name: z.string(), maker: z.string() }),
  model: z.string().nullable(),
  inForceOn: dayText,
  revision: z.int(),
  buildDates,
  positions: z.array(position),
  rulings: z.array(rulingView),
});
export type LookUpAnswer = z.infer<typeof lookUpAnswer>;
