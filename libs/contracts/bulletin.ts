import { z } from 'zod';
import { dayText, instantText, line, reason, rowId } from './common';
import { shelfShare } from './shelf';

export const SOURCE_KINDS = [
  'owners-manual',
  'parts-list',
  'revised-parts-list',
  'service-bulletin',
  'makers-advice',
  'shop-finding',
] as const;

/** What publishing would do to the rulebook. `opens` are FitRuleFile of the fit-rules library. */
export const bulletinDraft = z.object({
  opens: z
    .array(z.looseObject({ key: z.string() }))
    .max(10_000)
    .default([]),
  ends: z
    .array(z.object({ rule: z.string(), on: dayText }))
    .max(10_000)
    .default([]),
});
export type BulletinDraft = z.infer<typeof bulletinDraft>;

/** POST /api/bulletins and PUT /api/bulletins/:id */
export const saveBulletin = z.object({
  kind: z.enum(SOURCE_KINDS).default('service-bulletin'),
  publisher: line(200).min(1, { error: 'expected who published it' }),
  number: line(60).min(1, { error: 'expected the number printed on it' }),
  title: line(300).min(1, { error: 'expected a title' }),
  summary: line(4_000).default(''),
  issued: dayText,
  effective: dayText.nullable().default(null),
  received: dayText,
  draft: bulletinDraft,
});
export type SaveBulletin = z.infer<typeof saveBulletin>;

/** GET /api/bulletins: newest first. */
export const bulletinRow = z.object({
  id: rowId,
  key: z.string(),
  kind: z.enum(SOURCE_KINDS),
  publisher: z.string(),
  number: z.string(),
  title: z.string(),
  issued: dayText,
  effective: dayText.nullable(),
  state: z.enum(['draft', 'published', 'withdrawn']),
  publishedAt: instantText.nullable(),
  ruleCount: z.int(),
  version: z.int(),
});
export const bulletinRows = z.array(bulletinRow);
export type BulletinRow = z.infer<typeof bulletinRow>;

/** A rule as a reader of the bulletin sees it. */
export const ruleView = z.object({
  key: z.string(),
  version: z.int(),
  line: z.string(),
  positions: z.array(z.string()),
  models: z.array(z.string()),
  options: z.array(z.string()),
  built: z.string(),
  serials: z.string().nullable(),
  inForce: z.string(),
  required: z.string().nullable(),
  allowed: z.array(z.string()),
  barred: z.array(z.object({ part: z.string(), reason: z.string() })),
  action: z.enum(['nothing', 'next-service', 'call-back', 'stop-use']),
  replaces: z.array(z.string()),
  sentence: z.string(),
});
export type RuleView = z.infer<typeof ruleView>;

/** How far a recheck has come. */
export const recheckView = z.object({
  id: rowId,
  cause: z.string(),
  bulletin: z.string().nullable(),
  revision: z.int(),
  state: z.enum(['planned', 'running', 'done']),
  planned: z.int(),
  judged: z.int(),
  changed: z.int(),
  flagsRaised: z.int(),
  flagsCleared: z.int(),
  callbacksOpened: z.int(),
  callbacksClosed: z.int(),
  setAside: z.int(),
  setAsideWhy: z.array(z.string()),
  createdAt: instantText,
  startedAt: instantText.nullable(),
  finishedAt: instantText.nullable(),
  perSecond: z.number().nullable(),
  secondsLeft: z.number().nullable(),
});
export const rechecks = z.array(recheckView);
export type RecheckView = z.infer<typeof recheckView>;

export const bulletinDetail = bulletinRow.extend({
  summary: z.string(),
  received: dayText,
  withdrawnAt: instantText.nullable(),
  withdrawnWhy: z.string().nullable(),
  opens: z.array(ruleView),
  ends: z.array(z.object({ rule: ruleView.nullable(), key: z.string(), on: dayText })),
  draft: bulletinDraft.nullable(),
  recheck: recheckView.nullable(),
});
export type BulletinDetail = z.infer<typeof bulletinDetail>;

/** POST /api/bulletins/:id/what-if: the counts publishing would bring, from the code that would run. */
export const whatIf = z.object({
  /** The revision of the rulebook this was worked out on; publishing names it, so that nobody publishes unseen. */
  revision: z.int(),
  installs: z.int(),
  changed: z.int(),
  tickets: z.int(),
  callbacks: z.int(),
  shelf: shelfShare,
  byReason: z.array(z.object({ reason: z.string(), count: z.int() })),
  first: z.array(
    z.object({
      unit: z.string(),
      owner: z.string(),
      position: z.string(),
      placeName: z.string(),
      from: z.string(),
      to: z.string(),
    }),
  ),
  findings: z.array(
    z.object({ severity: z.string(), sentence: z.string(), line: z.string(), position: z.string().nullable() }),
  ),
});
export type WhatIf = z.infer<typeof whatIf>;

/** POST /api/bulletins/:id/publish: what the what-if was worked out on. */
export const publishBulletinInput = z.object({
  whatIfRevision: z.int({ error: 'expected the revision that the answer to "what if" names; ask that first' }),
});
export type PublishBulletinInput = z.infer<typeof publishBulletinInput>;

/** POST /api/bulletins/:id/publish answers at once; the recheck goes on by itself. */
export const published = z.object({ bulletin: bulletinRow, recheck: recheckView });
export type Published = z.infer<typeof published>;
export const withdrawBulletin = z.object({ reason });
