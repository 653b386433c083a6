import { type FastenerSpec, type FastenerSpecInput, fastenerSpecSchema } from './fastener-spec';
import { check, type Outcome } from './problem';
import { type ShearJoint, type ShearJointInput, shearJointSchema } from './shear-joint';
import { sayLength } from './units';

/** One thing looked at. `not-told` where a measure is missing. */
export interface FitFinding {
  field: 'diameter' | 'length' | 'room' | 'thread' | 'cross-hole';
  fits: 'yes' | 'no' | 'not-told';
  sentence: string;
}

/** Whether a fastener goes in and holds: no where one finding is no, else not told where one is. */
export interface FitAnswer {
  fits: FitFinding['fits'];
  findings: FitFinding[];
}

/**
 * Looks at diameter against the hole, length against hub and shaft with what goes under the head and beyond the far
 * face, room to turn, and what keeps it in. Bounds count as fitting. It says nothing of strength. Refused: bad fields.
 */
export function doesItFit(spec: FastenerSpecInput, joint: ShearJointInput): Outcome<FitAnswer> {
  const fastener = check<FastenerSpec>(fastenerSpecSchema, spec, 'fastener');
  const place = check<ShearJoint>(shearJointSchema, joint, 'joint');
  if (!fastener.ok) return fastener;
  if (!place.ok) return place;
  const looked = [diameter, length, room, keeper].map((look) => look(fastener.value, place.value));
  const findings = looked.filter((finding) => finding !== null);
  const worst = (['no', 'not-told'] as const).find((fits) => findings.some((finding) => finding.fits === fits));
  return { ok: true, value: { fits: worst ?? 'yes', findings } };
}

function diameter({ diameterMm }: FastenerSpec, { holeDiameterMm, maxPlayMm }: ShearJoint): FitFinding {
  const finding = (fits: FitFinding['fits'], sentence: string): FitFinding => ({ field: 'diameter', fits, sentence });
  if (holeDiameterMm === null)
    return finding('not-told', 'The hole is not measured, so the diameter cannot be checked.');
  const [shank, hole] = [sayLength(diameterMm), sayLength(holeDiameterMm)];
  const play = round(holeDiameterMm - diameterMm);
  if (play < 0) return finding('no', `Too thick: ${shank} does not go into a hole of ${hole}.`);
  if (play > maxPlayMm) {
    return finding(
      'no',
      `Too loose: ${shank} in a hole of ${hole} has ${play} mm play, more than ${maxPlayMm} mm, and bends before it shears.`,
    );
  }
  return finding('yes', `${shank} goes into a hole of ${hole}.`);
}

function length(spec: FastenerSpec, joint: ShearJoint): FitFinding {
  const finding = (fits: FitFinding['fits'], sentence: string): FitFinding => ({ field: 'length', fits, sentence });
  if (spec.lengthMm === null) return finding('not-told', 'The length of the fastener is not known.');
  if (joint.gripMm === null)
    return finding('not-told', 'Hub and shaft are not measured, so the length cannot be checked.');
  const beyond = spec.thread ? joint.nutAllowanceMm : spec.crossHole ? joint.cotterAllowanceMm : 0;
  const needed = round(joint.gripMm + joint.underHeadAllowanceMm + beyond);
  const parts = `hub and shaft ${joint.gripMm} mm, under the head ${joint.underHeadAllowanceMm} mm, beyond the far face ${beyond} mm`;
  if (spec.lengthMm < needed) {
    return finding('no', `Too short: ${sayLength(spec.lengthMm)} where ${needed} mm are needed (${parts}).`);
  }
  return finding('yes', `Long enough: ${sayLength(spec.lengthMm)} where ${needed} mm are needed (${parts}).`);
}

function room({ lengthMm }: FastenerSpec, { roomMm }: ShearJoint): FitFinding | null {
  if (roomMm === null || lengthMm === null) return null;
  if (lengthMm <= roomMm)
    return { field: 'room', fits: 'yes', sentence: `It clears what turns past it: ${roomMm} mm of room.` };
  const sentence = `Too long: ${sayLength(lengthMm)} where there is room for ${roomMm} mm, so it can strike what turns past it.`;
  return { field: 'room', fits: 'no', sentence };
}

/** A joint with an allowance for a nut or a cotter wants a thread or a hole for it; either will do where both are given. */
function keeper(spec: FastenerSpec, joint: ShearJoint): FitFinding | null {
  const [wantsNut, wantsCotter] = [joint.nutAllowanceMm > 0, joint.cotterAllowanceMm > 0];
  if (!wantsNut && !wantsCotter) return null;
  if (wantsNut && spec.thread) return { field: 'thread', fits: 'yes', sentence: 'It has a thread for the nut.' };
  if (!wantsCotter)
    return { field: 'thread', fits: 'no', sentence: 'The joint is held by a nut, and this fastener has no thread.' };
  return cotter(spec, joint);
}

function cotter({ crossHole }: FastenerSpec, joint: ShearJoint): FitFinding {
  const finding = (fits: FitFinding['fits'], sentence: string): FitFinding => ({ field: 'cross-hole', fits, sentence });
  if (crossHole === null) return finding('no', 'The joint is held by a cotter, and this fastener has no hole for it.');
  if (joint.gripMm === null)
    return finding('not-told', 'Hub and shaft are not measured, so the cotter hole cannot be checked.');
  const edge = round(crossHole.atMm - crossHole.diameterMm / 2);
  const face = round(joint.gripMm + joint.underHeadAllowanceMm);
  if (edge >= face)
    return finding(
      'yes',
      `The cotter hole clears the far face: it begins ${edge} mm under the head, the face lies at ${face} mm.`,
    );
  return finding(
    'no',
    `The cotter hole begins ${edge} mm under the head, inside the far face at ${face} mm, so no cotter goes in.`,
  );
}

/** Sums of measures, to the micrometre, so that 40 mm is not short of 40.000000001. */
function round(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
