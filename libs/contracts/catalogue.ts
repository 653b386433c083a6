import { z } from 'zod';
import { dayText, line, rowId } from './common';

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

/** A number that a part's bag carries in its bar code (GTIN), as bags show it, and the pieces in that bag. */
export const tradeNumber = z.object({ number: z.string(), pack: z.int() });
export type TradeNumber = z.infer<typeof tradeNumber>;

/** POST /api/parts/:id/trade-numbers; DELETE /api/parts/:id/trade-numbers/:number takes one away. */
export const addTradeNumber = z.object({
  number: line(40).min(1, { error: 'expected the digits under the bar code' }),
  pack: z.int().min(1).max(10_000, { error: 'expected 1 to 10000 pieces' }).default(1),
});
export type AddTradeNumber = z.infer<typeof addTradeNumber>;

/** GET /api/parts?q= : found by any writing of the number, or by a word of the name; at most 30. */
export const part = z.object({
  id: rowId,
  key: z.string(),
  number: z.string(),
  name: z.string(),
  maker: z.string(),
  listed: z.boolean(),
  priceMinor: z.int().nullable(),
  tradeNumbers: z.array(tradeNumber),
});
export const parts = z.array(part);
export type Part = z.infer<typeof part>;
