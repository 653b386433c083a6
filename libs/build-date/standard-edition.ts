import { z } from 'zod';
import { PartialDateSchema } from './written-days';

/** One edition of a safety or product standard, as named on data plates. Shop data, seeded from the published list. */
export const StandardEditionSchema = z.object({
  /** As printed, without the year: `ANSI B71.3`. */
  standard: z.string().min(1).max(80),
  /** The year in its name: `2005`. */
  edition: z.string().regex(/^\d{4}$/, 'an edition is named by its four-digit year, such as 2005'),
  /** When it was approved; may lie in the year before the one it is named after. */
  approved: PartialDateSchema.nullable().default(null),
  published: PartialDateSchema.nullable().default(null),
  subject: z.string().max(200).default(''),
  source: z.string().max(300),
});
export type StandardEdition = z.infer<typeof StandardEditionSchema>;
