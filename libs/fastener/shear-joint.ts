import { z } from 'zod';
import { lengthMm, placeMm } from './fastener-spec';

const ALLOWANCE = 'a length in millimetres, 0 or more';
const allowanceMm = z.number({ error: ALLOWANCE }).nonnegative({ error: ALLOWANCE }).default(0);

/** A measured value: one number, or the span it lies in (both ends inclusive). */
export const lengthOrSpanMm = z.union(
  [
    lengthMm,
    z.object({ low: lengthMm, high: lengthMm }).refine((span) => span.low <= span.high, {
      error: 'a span whose low end is not above its high end',
    }),
  ],
  { error: 'a length in millimetres above 0, or a span with a low and a high end' },
);

/** Where a shear fastener works: the shaft, the hub over it, and what hangs on them. */
export const shearJointSchema = z
  .object({
    shaftRadiusMm: lengthOrSpanMm.describe('from the axis of the shaft to the shear plane'),
    planes: z.union([z.literal(1), z.literal(2)], { error: '1 (single shear) or 2 (double shear)' }),
    /** Where the planes cut the fastener, from under its head; null when nobody measured it. */
    shearPlanesAtMm: z.array(placeMm).nullable().default(null),
    /** How far the fastener or the measurement may be off along its axis. */
    planeToleranceMm: allowanceMm,
    pinsSharing: z
      .number({ error: 'a whole number of fasteners, 1 or more' })
      .int({ error: 'a whole number of fasteners, 1 or more' })
      .min(1, { error: 'a whole number of fasteners, 1 or more' })
      .default(1),
    holeDiameterMm: lengthMm.nullable().default(null),
    /** Largest play between hole and fastener before it bends rather than shears; shop data. */
    maxPlayMm: allowanceMm.default(0.5),
    /** Hub and shaft together, from under the head to the far face. */
    gripMm: lengthMm.nullable().default(null),
    /** The longest fastener, under its head, that clears what turns past it. */
    roomMm: lengthMm.nullable().default(null),
    underHeadAllowanceMm: allowanceMm.describe('washer or spacer under the head'),
    nutAllowanceMm: allowanceMm.describe('nut, and thread standing proud of it'),
    cotterAllowanceMm: allowanceMm.describe('from the far face to the end, for a cotter or clip'),
    ratedTorqueNm: z
      .number({ error: 'a torque in N·m above 0' })
      .positive({ error: 'a torque in N·m above 0' })
      .nullable()
      .default(null),
  })
  .superRefine((joint, context) => {
    const at = joint.shearPlanesAtMm;
    if (at !== null && at.length !== joint.planes) {
      context.addIssue({
        code: 'custom',
        path: ['shearPlanesAtMm'],
        message: `${joint.planes} place(s), one per shear plane`,
      });
    }
  });
export type ShearJoint = z.infer<typeof shearJointSchema>;
/** The same with everything left out that has a default or may be null. */
export type ShearJointInput = z.input<typeof shearJointSchema>;

/** Both ends inclusive; equal ends mean one value. */
export interface Range {
  low: number;
  high: number;
}

/** Shop data: a ratio below the first breaks sooner, one above the second breaks later. No standard gives them. */
export const thresholdSchema = z.object({
  soonerBelow: z
    .number({ error: 'a ratio above 0 and at most 1' })
    .positive({ error: 'a ratio above 0 and at most 1' })
    .max(1, { error: 'a ratio above 0 and at most 1' }),
  laterAbove: z.number({ error: 'a ratio of 1 or more' }).min(1, { error: 'a ratio of 1 or more' }),
});
export type Threshold = z.infer<typeof thresholdSchema>;

/** What a shop starts with: 15 % either way (our choice, no source). */
export const STARTING_THRESHOLD: Threshold = { soonerBelow: 0.85, laterAbove: 1.15 };
