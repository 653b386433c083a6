import { z } from 'zod';
import { dayText, verdict } from './common';
import { strengthView } from './strength';

export * from './strength';

/** A source as it stands under a verdict. */
export const sourceRef = z.object({
  key: z.string(),
  kind: z.string(),
  number: z.string(),
  title: z.string(),
  issued: dayText,
});

export const partRef = z.object({ key: z.string(), number: z.string(), name: z.string() });
export type PartRef = z.infer<typeof partRef>;

/** One stretch of the unit's possible days (and serials, options) in which one answer holds. */
export const rulingPiece = z.object({
  built: z.array(z.object({ from: dayText.nullable(), to: dayText.nullable() })),
  /** what else must hold, in words: a serial span, an option */
  when: z.array(z.string()),
  outcome: z.enum(['decided', 'disputed', 'nothing-said']),
  required: partRef.nullable(),
  allowed: z.array(partRef),
  barred: z.array(
    z.object({
      part: partRef,
      reason: z.string(),
      rule: z.string(),
      /** the paper that says it, as in a sentence */
      source: z.string(),
      voidsWarranty: z.boolean(),
    }),
  ),
  rule: z.string().nullable(),
  source: sourceRef.nullable(),
  overridden: z.array(z.object({ rule: z.string(), source: sourceRef.nullable(), why: z.string() })),
});
export type RulingPiece = z.infer<typeof rulingPiece>;

/** The answer for one unit and position. */
export const rulingView = z.object({
  position: z.string(),
  settled: z.boolean(),
  sentence: z.string(),
  pieces: z.array(rulingPiece),
  /** days at which the answer changes within the possible build days */
  boundaries: z.array(dayText),
  dependsOn: z.array(z.string()),
});
export type RulingView = z.infer<typeof rulingView>;

/** The judgement on one part in one place, in words a technician reads in one glance. */
export const verdictView = z.object({
  verdict,
  sentence: z.string(),
  ownerSentence: z.string(),
  required: partRef.nullable(),
  rule: z.string().nullable(),
  source: sourceRef.nullable(),
  builtSpan: z.string(),
  inForceSpan: z.string(),
  action: z.enum(['nothing', 'next-service', 'call-back', 'stop-use']).nullable(),
  barredWhy: z.string().nullable(),
  thenVerdict: verdict.nullable(),
  couldHaveKnown: z.boolean().nullable(),
  revision: z.int(),
  strength: strengthView.nullable(),
});
export type VerdictView = z.infer<typeof verdictView>;

/** POST /api/look-up: a walk-in without a ticket. */
export const lookUpRequest = z.object({
  lineCode: z.string(),
  modelNumber: z.string().nullable().default(null),
  serial: z.string().trim().max(60).nullable().default(null),
  options: z.record(z.string(), z.boolean()).default({}),
  evidence: z
    .array(z.looseObject({ kind: z.string() }))
    .max(20)
    .default([]),
  /** the day whose papers are asked for; today when absent */
  inForceOn: dayText.optional(),
  /** codes of the positions asked about; all of the line when absent */
  positions: z.array(z.string()).min(1).max(100).optional(),
});
export type LookUpRequest = z.infer<typeof lookUpRequest>;
