import type { ShearJoint } from '../../fastener';
import { bad, good, shown } from '../cell';
import { column } from '../column';
import { listOf, numberIn, words, type Reader } from '../readers';
import { millimetres } from './fastener-columns';

type LengthOrSpan = number | { readonly low: number; readonly high: number };

/** `15`, or `14.8 to 15.2` where it was measured with a span. */
const lengthOrSpan: Reader<LengthOrSpan> = (cell, how) => {
  const text = typeof cell === 'number' ? good(String(cell)) : words(40)(cell, how);
  if (!text.ok) return text;
  const span = /^(.+) to (.+)$/.exec(text.value);
  if (!span) return millimetres(cell, how);
  const [low, high] = [millimetres(span[1]!, how), millimetres(span[2]!, how)];
  if (!low.ok || !high.ok || low.value > high.value)
    return bad('not-accepted', `${shown(cell)} must be a length, or two such as 14.8 to 15.2.`);
  return good({ low: low.value, high: high.value });
};

const mm = (heading: string, says: string) =>
  column(heading, millimetres, { says: `${says}, in millimetres.`, example: '' });

/** Columns of a position that takes a shear fastener; all blank for one that takes none. */
export const jointColumns = {
  shaftRadius: column('Shaft radius mm', lengthOrSpan, {
    also: ['shaft radius', 'radius'],
    says: 'From the axis of the shaft to the shear plane, in millimetres; 14.8 to 15.2 where it was measured so.',
    example: '15',
    write: (value) => (typeof value === 'number' ? String(value) : `${value.low} to ${value.high}`),
  }),
  planes: column('Shear planes', numberIn({ least: 1, most: 2, decimals: 0 }), {
    also: ['planes'],
    says: '1 for single, 2 for double shear.',
    example: '2',
  }),
  planesAt: column('Planes at mm', listOf(millimetres, 2), {
    says: 'Where the planes cut the fastener, from under its head, between semicolons.',
    example: '',
  }),
  planeTolerance: mm('Plane tolerance mm', 'How far that may be off'),
  pins: column('Pins sharing', numberIn({ least: 1, most: 100, decimals: 0 }), {
    says: 'How many fasteners share the load. Blank is 1.',
    example: '',
  }),
  hole: mm('Hole mm', 'Diameter of the hole'),
  maxPlay: mm('Most play mm', 'Largest play before it bends rather than shears. Blank is 0.5'),
  grip: mm('Grip mm', 'Hub and shaft together, from under the head to the far face'),
  room: mm('Room mm', 'The longest fastener that clears what turns past it'),
  underHead: mm('Under head mm', 'Washer or spacer under the head'),
  nut: mm('Nut mm', 'Nut, and thread standing proud of it'),
  cotter: mm('Cotter mm', 'From the far face to the end, for a cotter or clip'),
  ratedTorque: column('Rated torque Nm', numberIn({ most: 1_000_000 }), {
    also: ['rated torque', 'torque'],
    says: 'Rated torque of the drive line in N·m.',
    example: '600',
  }),
};

type Value = number | null | undefined;
export interface JointCells {
  readonly shaftRadius?: LengthOrSpan | null;
  readonly planes?: Value;
  readonly planesAt?: readonly number[] | null;
  readonly planeTolerance?: Value;
  readonly pins?: Value;
  readonly hole?: Value;
  readonly maxPlay?: Value;
  readonly grip?: Value;
  readonly room?: Value;
  readonly underHead?: Value;
  readonly nut?: Value;
  readonly cotter?: Value;
  readonly ratedTorque?: Value;
}

/** The cells of a joint, for an export. */
export function cellsOfJoint(joint: ShearJoint | null): JointCells {
  if (!joint) return {};
  return {
    shaftRadius: joint.shaftRadiusMm,
    planes: joint.planes,
    planesAt: joint.shearPlanesAtMm,
    planeTolerance: joint.planeToleranceMm,
    pins: joint.pinsSharing,
    hole: joint.holeDiameterMm,
    maxPlay: joint.maxPlayMm,
    grip: joint.gripMm,
    room: joint.roomMm,
    underHead: joint.underHeadAllowanceMm,
    nut: joint.nutAllowanceMm,
    cotter: joint.cotterAllowanceMm,
    ratedTorque: joint.ratedTorqueNm,
  };
}

/** What the cells say, as the joint's schema takes it; null when all are blank. */
export function jointOfCells(cells: JointCells): object | null {
  const given = Object.keys(jointColumns).some((key) => (cells[key as keyof JointCells] ?? null) !== null);
  if (!given) return null;
  const all = {
    shaftRadiusMm: cells.shaftRadius,
    planes: cells.planes,
    shearPlanesAtMm: cells.planesAt?.length ? cells.planesAt : null,
    planeToleranceMm: cells.planeTolerance,
    pinsSharing: cells.pins,
    holeDiameterMm: cells.hole,
    maxPlayMm: cells.maxPlay,
    gripMm: cells.grip,
    roomMm: cells.room,
    underHeadAllowanceMm: cells.underHead,
    nutAllowanceMm: cells.nut,
    cotterAllowanceMm: cells.cotter,
    ratedTorqueNm: cells.ratedTorque,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null && value !== undefined));
}
