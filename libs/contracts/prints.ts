import { z } from 'zod';
import { line, version } from './common';

export const PAPER_SIZES = ['A4', 'Letter'] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

/** Sheets of labels by how many stand across and down; the measures are in `libs/papers`. */
export const LABEL_SHEETS = ['a4-3x8', 'a4-3x7', 'a4-2x7', 'letter-3x10', 'letter-2x5'] as const;
export type LabelSheetName = (typeof LABEL_SHEETS)[number];

/**
 * Manners of writing days and numbers that are offered: in each, a day's month is written in letters, so that no figure
 * can be taken for another.
 */
export const MANNERS = [
  'en-GB',
  'en-US',
  'en-CA',
  'de-DE',
  'fr-FR',
  'nl-NL',
  'sv-SE',
  'pl-PL',
  'es-ES',
  'it-IT',
] as const;
export type Manner = (typeof MANNERS)[number];

export const TORQUE_UNITS = ['N·m', 'lbf·ft'] as const;
export type TorqueUnit = (typeof TORQUE_UNITS)[number];
export const LENGTH_UNITS = ['mm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** How a person reads days, numbers, torques and lengths. */
export const reading = z.object({
  manner: z.enum(MANNERS),
  torque: z.enum(TORQUE_UNITS),
  length: z.enum(LENGTH_UNITS),
});
export type Reading = z.infer<typeof reading>;

/** PUT /api/session/reading: how the person signed in reads the page; null as the shop has settled it. */
export const ownReading = z.object({ reading: reading.nullable() });
export type OwnReading = z.infer<typeof ownReading>;

/** PUT /api/settings/prints (If-Match): who the shop is on paper, on which paper, and in whose manner of writing. */
export const printSettings = reading.extend({
  shopName: line(120),
  address: line(300),
  phone: line(50),
  email: line(200),
  paper: z.enum(PAPER_SIZES),
  labels: z.enum(LABEL_SHEETS),
});
export type PrintSettings = z.infer<typeof printSettings>;

/** GET /api/settings/prints */
export const settledPrints = printSettings.extend({ version });
export type SettledPrints = z.infer<typeof settledPrints>;

/** As long as the shop has settled nothing. */
export const USUAL_PRINTS: PrintSettings = {
  shopName: '',
  address: '',
  phone: '',
  email: '',
  paper: 'A4',
  labels: 'a4-3x8',
  manner: 'en-GB',
  torque: 'N·m',
  length: 'mm',
};
