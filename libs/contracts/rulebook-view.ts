import { z } from 'zod';
import { ruleView, SOURCE_KINDS } from './bulletin';
import { dayText, rowId, verdict } from './common';
import { partRef, rulingView } from './ruling';

/** GET /api/rulebook: every paper of the shop, and every line with the number of its rules that are known now. */
export const rulebookOverview = z.object({
  revision: z.int(),
  inForceOn: dayText,
  sources: z.array(
    z.object({
      id: rowId,
      key: z.string(),
      kind: z.enum(SOURCE_KINDS),
      publisher: z.string(),
      number: z.string(),
      title: z.string(),
      issued: dayText,
      effective: dayText.nullable(),
      state: z.enum(['draft', 'published', 'withdrawn']),
      /** How much this kind of paper counts against another here; the higher decides. */
      standing: z.int(),
      ruleCount: z.int(),
    }),
  ),
  lines: z.array(z.object({ code: z.string(), name: z.string(), maker: z.string(), ruleCount: z.int() })),
});
export type RulebookOverview = z.infer<typeof rulebookOverview>;

/** By the papers in force on which day, as the shop knew at the end of which day; both today when left out. */
const clocks = { inForceOn: dayText.optional(), knownOn: dayText.optional() };
export const chartQuery = z.object(clocks);

/** GET /api/rulebook/rules: `q` looks in the sentence, the key and the paper. */
export const rulesQuery = z.object({
  ...clocks,
  line: z.string().trim().max(80).optional(),
  position: z.string().trim().max(80).optional(),
  q: z.string().trim().max(100).default(''),
});
export type RulesQuery = z.infer<typeof rulesQuery>;

/** Rules known then, by line and position; the first `rules.length` of `total`. */
export const ruleList = z.object({
  inForceOn: dayText,
  knownOn: dayText,
  total: z.int(),
  rules: z.array(
    ruleView.extend({
      lineName: z.string(),
      positionNames: z.array(z.string()),
      paper: z.string(),
      /** Whether the rule speaks on the day. */
      speaks: z.enum(['in-force', 'coming', 'ended']),
    }),
  ),
});
export type RuleList = z.infer<typeof ruleList>;

export const FINDING_SEVERITIES = ['error', 'warning', 'note'] as const;

/** GET /api/rulebook/findings */
export const findingsQuery = z.object({
  ...clocks,
  line: z.string().trim().max(80).optional(),
  severity: z.enum(FINDING_SEVERITIES).optional(),
});
export type FindingsQuery = z.infer<typeof findingsQuery>;

/** What is wrong with the rulebook, worst first; `counts` are of the line, whatever severity was asked for. */
export const findingList = z.object({
  inForceOn: dayText,
  knownOn: dayText,
  counts: z.object({ error: z.int(), warning: z.int(), note: z.int() }),
  findings: z.array(
    z.object({
      code: z.string(),
      severity: z.enum(FINDING_SEVERITIES),
      line: z.string().nullable(),
      lineName: z.string().nullable(),
      position: z.string().nullable(),
      positionName: z.string().nullable(),
      /** The units it touches, in words. */
      units: z.string().nullable(),
      sentence: z.string(),
      mend: z.string(),
      /** A unit that shows it, in words. */
      example: z.string().nullable(),
      rules: z.array(z.object({ key: z.string(), version: z.int(), paper: z.string() })),
      parts: z.array(partRef),
    }),
  ),
});
export type FindingList = z.infer<typeof findingList>;

/** GET /api/rulebook/wall-chart/:line: positions down, build dates across. */
export const wallChartView = z.object({
  line: z.object({ code: z.string(), name: z.string(), maker: z.string() }),
  inForceOn: dayText,
  knownOn: dayText,
  revision: z.int(),
  /** First day of production, and the day after the last. */
  production: z.object({ from: dayText, to: dayText }),
  rows: z.array(
    z.object({
      position: z.string(),
      positionName: z.string(),
      /** The units the row holds for, in words, where model, serial or options make a difference. */
      when: z.string(),
      spans: z.array(
        z.object({
          from: dayText,
          /** Not included. */
          to: dayText,
          outcome: z.enum(['decided', 'disputed', 'nothing-said']),
          required: partRef.nullable(),
          /** Allowed; in a dispute every part that one of the papers names. */
          allowed: z.array(partRef),
          barred: z.array(partRef),
          papers: z.array(z.string()),
        }),
      ),
    }),
  ),
});
export type WallChartView = z.infer<typeof wallChartView>;

/** GET /api/tickets/:id/places/:position/:place/explain */
export const explainQuery = z.object({ side: z.enum(['found', 'left']).optional() });

/** The whole chain behind the verdict of a place, as text and as data. */
export const placeExplanation = z.object({
  side: z.enum(['found', 'left']),
  verdict,
  text: z.array(z.string()),
  ruling: rulingView,
  rules: z.array(ruleView),
  candidates: z.array(z.object({ part: partRef, verdict, then: z.string(), thenAsKnown: z.string().nullable() })),
  /** All the verdict rests on, in the library's own file form: it can be judged again anywhere. */
  record: z.looseObject({ format: z.literal(1) }),
  /** The verdict that was kept when the place was last judged, judged again from what was kept with it. */
  kept: z
    .object({
      judgedOn: dayText,
      revision: z.int(),
      verdict,
      sentence: z.string(),
      /** True when judging again gives the same verdict in the same words. */
      sameWords: z.boolean(),
      text: z.array(z.string()),
    })
    .nullable(),
});
export type PlaceExplanation = z.infer<typeof placeExplanation>;
