import { z } from 'zod';
import { SerialFieldSchema } from './serial-field';
import { WrittenDaySchema } from './written-days';
import { problemsOfScheme } from './serial-scheme-check';

/** How a maker wrote serials in one stretch of time. Shop data, changed in an editor. */
export const SerialSchemeSchema = z
  .object({
    id: z.string().min(1).max(80),
    maker: z.string().min(1).max(120),
    /** Product lines it was used on; empty means every line of the maker. */
    lines: z.array(z.string()).default([]),
    name: z.string().min(1).max(120),
    /** First build day the maker used it, inclusive; null when not known. */
    validFrom: WrittenDaySchema.nullable(),
    /** First build day it was no longer used (exclusive); null while in use or when not known. */
    validTo: WrittenDaySchema.nullable(),
    fields: z.array(SerialFieldSchema).min(1).max(20),
    /** The paper that says so, or `common practice, no source`. */
    source: z.string().max(300).default('common practice, no source'),
  })
  .superRefine((scheme, context) => {
    for (const message of problemsOfScheme(scheme)) context.addIssue({ code: 'custom', message, path: ['fields'] });
  });
export type SerialScheme = z.infer<typeof SerialSchemeSchema>;
