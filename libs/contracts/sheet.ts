import { z } from 'zod';
import { CELL_FAULTS, DAY_ORDERS, SHEET_KINDS } from '../sheets';
import { rowId } from './common';

export const sheetKind = z.enum(SHEET_KINDS);
export const SHEET_STATES = ['reading', 'read', 'looked', 'done'] as const;

/** What is wrong with one cell, or (`field` and `heading` null) with the whole row. */
export const cellProblem = z.object({
  field: z.string().nullable(),
  code: z.enum(CELL_FAULTS),
  says: z.string(),
  /** As the file heads the column. */
  heading: z.string().nullable(),
  /** As a spreadsheet names the column: A, B, ..., AA. */
  column: z.string().nullable(),
  value: z.string(),
});
export type CellProblemView = z.infer<typeof cellProblem>;

/** A rejected row under the number a spreadsheet gives it: the heading is usually 1. */
export const rejectedRow = z.object({ row: z.int(), problems: z.array(cellProblem) });

/** What a dry run found, or an import did, in rows. */
export const sheetOutcome = z.object({
  add: z.int(),
  change: z.int(),
  same: z.int(),
  rejected: z.int(),
  /** The recheck the import has started, where it can change an answer. */
  recheckId: rowId.nullable(),
});

/** Which column of the file, from 0, holds which field; null for a field that none holds. */
export const sheetMapping = z.record(z.string().max(40), z.int().min(0).max(1_000).nullable());

/** POST /api/sheets/:id/look: how the file is to be read. */
export const lookAtSheet = z.object({
  mapping: sheetMapping,
  /** How days such as 03/04/2017 are meant; null: nobody has said, and such a day is rejected. */
  dayOrder: z.enum(DAY_ORDERS).nullable().default(null),
  /** Papers are published at once; otherwise they wait as drafts. */
  publish: z.boolean().default(false),
});
export type LookAtSheet = z.infer<typeof lookAtSheet>;

/** POST /api/sheets/:id/import */
export const importSheet = z.object({
  /** Rejected rows stay out and the others go in; otherwise one rejected row keeps everything out. */
  leaveOutRejected: z.boolean().default(false),
});
export type ImportSheet = z.infer<typeof importSheet>;

/** A spreadsheet that was brought: how it is read, what it would change, and what it changed. */
export const sheetView = z.object({
  id: rowId,
  version: z.int(),
  kind: sheetKind,
  fileName: z.string(),
  state: z.enum(SHEET_STATES),
  format: z.enum(['csv', 'xlsx']),
  encoding: z.string().nullable(),
  /** False where the encoding is a guess: look whether the letters are right. */
  encodingCertain: z.boolean(),
  delimiter: z.string().nullable(),
  headings: z.array(z.string()),
  rows: z.int(),
  /** The first rows as they stand in the file. */
  sample: z.array(z.array(z.string())),
  mapping: sheetMapping,
  dayOrder: z.enum(DAY_ORDERS).nullable(),
  publish: z.boolean(),
  /** What is being done just now, and how many rows of it are done. */
  doing: z.string().nullable(),
  progress: z.int(),
  outcome: sheetOutcome.nullable(),
  /** The first of the rejected rows; all of them are in the list to download. */
  rejected: z.array(rejectedRow),
});
export type SheetView = z.infer<typeof sheetView>;

const documentCount = z.object({ added: z.int(), changed: z.int(), same: z.int() });

/** POST /api/rulebook/file: what the file has changed, or in a dry run would change. */
export const rulebookImported = z.object({
  dryRun: z.boolean(),
  counts: z.object({
    makers: documentCount,
    serialSchemes: documentCount,
    standardEditions: documentCount,
    lines: documentCount,
    parts: documentCount,
    sources: documentCount,
    rules: documentCount,
    supersessions: documentCount,
  }),
  recheckId: rowId.nullable(),
});
export type RulebookImported = z.infer<typeof rulebookImported>;
