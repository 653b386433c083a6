import type { FastenerSpec, ShearJoint } from '../../fastener';
import { jointKey, type CatalogueShapes } from '../../usecases';
import type { Db } from '../db';

/** Fasteners, joints and printed numbers of the whole catalogue, in two statements. */
export async function readShapes(db: Db): Promise<CatalogueShapes> {
  const parts = await db.$queryRaw<{ key: string; number: string; fastener: FastenerSpec | null }[]>`
    SELECT key, number, fastener FROM part`;
  const joints = await db.$queryRaw<{ line: string; position: string; joint: ShearJoint }[]>`
    SELECT l.code AS line, p.code AS position, p.joint
    FROM position p JOIN product_line l ON l.id = p.line_id WHERE p.joint IS NOT NULL`;
  return {
    numbers: new Map(parts.map(({ key, number }) => [key, number])),
    fasteners: new Map(parts.flatMap(({ key, fastener }) => (fastener === null ? [] : [[key, fastener]]))),
    joints: new Map(joints.map(({ line, position, joint }) => [jointKey(line, position), joint])),
  };
}
