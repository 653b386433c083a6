import { z } from 'zod';
import { dayText, instantText, line, reason, rowId } from './common';
import { partRef } from './ruling';

/** An owner as the counter knows them. */
export const owner = z.object({
  id: rowId,
  name: z.string(),
  phone: z.string(),
  email: z.string(),
  address: z.string(),
  consent: z.boolean(),
  version: z.int(),
});
export const owners = z.array(owner);
export type Owner = z.infer<typeof owner>;

export const newOwner = z.object({
  name: line(200).min(1, { error: 'expected a name' }),
  phone: line(50).default(''),
  email: line(200).default(''),
  address: line(500).default(''),
  consent: z.boolean().default(false),
});
export type NewOwner = z.infer<typeof newOwner>;

/**
 * What identifies a unit. `lineCode` and `modelNumber` may be null while they are not known; a serial number that
 * cannot be read is null and `serialAbsent` says why. An option not named in `options` is not known.
 */
export const unitIdentity = z.object({
  lineCode: z.string().nullable(),
  modelNumber: z.string().nullable(),
  serial: line(60).nullable(),
  serialAbsent: line(200).nullable(),
  options: z.record(z.string(), z.boolean()).default({}),
  plate: line(2_000).default(''),
});
export type UnitIdentity = z.infer<typeof unitIdentity>;

/** One piece of evidence as it stands on the unit: what it permits, in days and in words. */
export const evidenceView = z.object({
  id: z.string(),
  kind: z.string(),
  data: z.record(z.string(), z.unknown()),
  /** closed-open spans; a null side is open */
  days: z.array(z.object({ from: dayText.nullable(), to: dayText.nullable() })),
  sentence: z.string(),
  problem: z.string().nullable(),
  setAside: z.object({ why: z.string(), by: z.string().nullable(), at: instantText.nullable() }).nullable(),
});
export type EvidenceView = z.infer<typeof evidenceView>;

/** The possible build days of a unit and how they came about. */
export const buildDates = z.object({
  days: z.array(z.object({ from: dayText, to: dayText })),
  sentence: z.string(),
  evidence: z.array(evidenceView),
  /** what leaves a gap between the possible days, a sentence each; empty when they are one span */
  splits: z.array(z.string()),
  /** each a smallest set of evidence ids that cannot all be true */
  conflicts: z.array(z.array(z.string())),
  /**
   * other readings of a serial or vehicle number, offered only when the one typed cannot be read or contradicts other
   * evidence; `id` and `kind` name the piece that would read so
   */
  otherReadings: z.array(z.object({ id: z.string(), kind: z.string(), serial: z.string(), sentence: z.string() })),
  /** what to look at next, cheapest first; empty when the date is not needed */
  lookAt: z.array(z.object({ kind: z.string(), sentence: z.string() })),
  needed: z.boolean(),
});
export type BuildDates = z.infer<typeof buildDates>;

/** The warranty of a unit: up to and including `lastDay`, and in a sentence. */
export const warrantyView = z.object({
  boughtOn: dayText,
  months: z.int(),
  lastDay: dayText,
  runs: z.boolean(),
  sentence: z.string(),
});
export type WarrantyView = z.infer<typeof warrantyView>;

/** A place that was worked on, with the part it was left with; `barred` says which paper speaks against that part today. */
export const touchedPlace = z.object({
  position: z.string(),
  /** position and place in words */
  where: z.string(),
  part: partRef,
  ticket: z.object({ id: rowId, number: z.string() }),
  on: dayText,
  barred: z.string().nullable(),
});
export type TouchedPlace = z.infer<typeof touchedPlace>;

/** PUT /api/units/:id/warranty (If-Match): the day of purchase and the term in months; null takes them back. */
export const setWarranty = z.object({
  warranty: z
    .object({ boughtOn: dayText, months: z.int().min(1).max(600, { error: 'expected 1 to 600 months' }) })
    .nullable(),
});
export type SetWarranty = z.infer<typeof setWarranty>;

export const unitView = unitIdentity.extend({
  id: rowId,
  lineName: z.string().nullable(),
  makerName: z.string().nullable(),
  modelName: z.string().nullable(),
  version: z.int(),
  owner,
  buildDates,
  serialReading: z.string().nullable(),
  warranty: warrantyView.nullable(),
});
export type UnitView = z.infer<typeof unitView>;

/** A note that waits for the unit's next visit: what a paper asks to be done then. */
export const unitNote = z.object({
  id: rowId,
  /** position and place in words */
  where: z.string(),
  sentence: z.string(),
  source: z.string(),
  on: dayText,
});
export type UnitNoteView = z.infer<typeof unitNote>;

/** A note that a person settled: what was done about it, by whom, when. */
export const settledNote = unitNote.extend({ why: z.string(), by: z.string().nullable(), at: instantText });
export type SettledNoteView = z.infer<typeof settledNote>;

/** POST /api/units/:id/notes/:noteId/settle (If-Match of the unit): what was done about it. */
export const settleNote = z.object({ reason });
export type SettleNote = z.infer<typeof settleNote>;

/** GET /api/owners/:id/units: the units of one owner, as the counter tells them apart. */
export const unitRow = z.object({
  id: rowId,
  name: z.string(),
  serial: z.string().nullable(),
  lineCode: z.string().nullable(),
  openTicket: z.string().nullable(),
});
export const unitRows = z.array(unitRow);
export type UnitRow = z.infer<typeof unitRow>;

/** POST /api/units/:id/evidence; `data` is one Evidence of the build-date library without id and set-aside. */
export const newEvidence = z.object({ evidence: z.looseObject({ kind: z.string() }) });
export type NewEvidence = z.infer<typeof newEvidence>;

/** POST /api/units/:id/evidence/:evidenceId/set-aside ; `reason` null takes it up again. */
export const setAsideEvidence = z.object({ reason: reason.nullable() });
export type SetAsideEvidence = z.infer<typeof setAsideEvidence>;
