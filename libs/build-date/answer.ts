import { z } from 'zod';
import type { DaySet, DaySpan } from '../day';
import { SetAsideSchema, type EvidenceKind, type SetAside, EVIDENCE_KINDS } from './evidence';
import { WrittenDaysSchema, WrittenSpanSchema, writeDays } from './written-days';

/** Why a piece says nothing. The sentence names field, value and what would be accepted. */
export const EVIDENCE_PROBLEM_CODES = [
  'no-scheme-for-maker',
  'fits-no-scheme',
  'unknown-edition',
  'not-a-family-code',
  'not-a-vin',
  'vin-check-digit',
  'not-a-tyre-code',
  'no-such-date',
  'outside-bounds',
] as const;
export type EvidenceProblemCode = (typeof EVIDENCE_PROBLEM_CODES)[number];
export interface EvidenceProblem {
  readonly code: EvidenceProblemCode;
  readonly sentence: string;
}

/** One piece of evidence, read. `days` lie within the bounds; a piece with a problem allows every day there. */
export interface ReadPiece {
  readonly id: string;
  readonly kind: EvidenceKind;
  readonly days: DaySet;
  readonly sentence: string;
  readonly setAside: SetAside | null;
  readonly problem: EvidenceProblem | null;
}

/** Another reading of confused characters that would end the trouble. Offered, never taken by itself. */
export interface Misreading {
  readonly id: string;
  readonly given: string;
  readonly possible: string;
  /** The days left when the piece is read so, by all evidence. */
  readonly days: DaySet;
  readonly sentence: string;
}

/** Days that lie between two spans of the answer, and the pieces that rule them out. */
export interface Split {
  readonly gap: DaySpan;
  readonly by: readonly string[];
  readonly sentence: string;
}

/** What all evidence together says. Empty `days` means the evidence conflicts; see `conflicts`. */
export interface BuildDateAnswer {
  readonly bounds: DaySpan;
  readonly days: DaySet;
  readonly sentence: string;
  readonly pieces: readonly ReadPiece[];
  /** Every smallest set of ids that cannot all be true; empty while the evidence agrees. */
  readonly conflicts: readonly (readonly string[])[];
  readonly misreadings: readonly Misreading[];
  readonly splits: readonly Split[];
}

const problem = z.object({ code: z.enum(EVIDENCE_PROBLEM_CODES), sentence: z.string() });
const sentence = z.string();

/** The answer on the wire, days as text. */
export const BuildDateAnswerSchema = z.object({
  bounds: WrittenSpanSchema,
  days: WrittenDaysSchema,
  sentence,
  pieces: z.array(
    z.object({
      id: z.string(),
      kind: z.enum(EVIDENCE_KINDS),
      days: WrittenDaysSchema,
      sentence,
      setAside: SetAsideSchema.nullable(),
      problem: problem.nullable(),
    }),
  ),
  conflicts: z.array(z.array(z.string())),
  misreadings: z.array(
    z.object({ id: z.string(), given: z.string(), possible: z.string(), days: WrittenDaysSchema, sentence }),
  ),
  splits: z.array(z.object({ gap: WrittenSpanSchema, by: z.array(z.string()), sentence })),
});
export type WrittenAnswer = z.infer<typeof BuildDateAnswerSchema>;

/** Writes an answer for the wire. */
export function writeAnswer(answer: BuildDateAnswer): WrittenAnswer {
  const write = <T extends { days: DaySet }>(part: T) => ({ ...part, days: writeDays(part.days) });
  return {
    ...write(answer),
    bounds: writeDays([answer.bounds])[0]!,
    pieces: answer.pieces.map(write),
    conflicts: answer.conflicts.map((ids) => [...ids]),
    misreadings: answer.misreadings.map(write),
    splits: answer.splits.map((split) => ({ ...split, by: [...split.by], gap: writeDays([split.gap])[0]! })),
  };
}
