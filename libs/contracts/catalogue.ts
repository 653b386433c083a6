import { z } from 'zod';
import { dayText, rowId } from './common';

/** GET /api/benches */
export const bench = z.object({ id: rowId, code: z.string(), name: z.string(), location: z.string() });
export const benches = z.array(bench);
export type Bench = z.infer<typeof bench>;

export const model = z.object({ id: rowId, number: z.string(), name: z.string() });
export const option = z.object({ code: z.string(), name: z.string() });

export const position = z.object({
  id: rowId,
  code: z.string(),
  name: z.string(),
  assembly: z.string(),
  places: z.int().positive(),
  placeNames: z.array(z.string()),
  sketchX: z.number(),
  sketchY: z.number(),
  shear: z.boolean(),
});
export type Position = z.infer<typeof position>;

/** GET /api/lines: every product line, without its positions. */
export const lineSummary = z.object({
  id: rowId,
  code: z.string(),
  name: z.string(),
  kind: z.string(),
  maker: z.object({ code: z.string(), name: z.string() }),
  models: z.array(model),
  options: z.array(option),
  producedFrom: dayText,
  producedUntil: dayText.nullable(),
});
export const lines = z.array(lineSummary);
export type LineSummary = z.infer<typeof lineSummary>;

/** GET /api/lines/:code */
export const lineDetail = lineSummary.extend({ sketch: z.string(), positions: z.array(position) });
export type LineDetail = z.infer<typeof lineDetail>;

/** GET /api/parts?q= : found by any writing of the number, or by a word of the name; at most 30. */
export const part = z.object({
  id: rowId,
  key: z.string(),
  number: z.string(),
  name: z.string(),
  maker: z.string(),
  listed: z.boolean(),
  priceMinor: z.int().nullable(),
});
export const parts = z.array(part);
export type Part = z.infer<typeof part>;
