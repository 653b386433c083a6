import type { FastenerSpec, ShearJoint } from '../../fastener';
import { jointKey, type CatalogueShapes } from '../../usecases';
import type { Db } from '../db';

interface PlaceRow {
  readonly line: string;
  readonly lineName: string;
  readonly position: string;
  readonly name: string;
  readonly joint: ShearJoint | null;
}

/** Fasteners, joints, printed numbers and names of the whole catalogue, in two statements. */
export async function readShapes(db: Db): Promise<CatalogueShapes> {
  const parts = await db.$queryRaw<{ key: string; number: string; fastener: FastenerSpec | null }[]>`
    SELECT key, number, fastener FROM part`;
  const places = await db.$queryRaw<PlaceRow[]>`
    SELECT l.code AS line, l.name AS "lineName", p.code AS position, p.name, p.joint
    FROM product_line l JOIN position p ON p.line_id = l.id`;
  return {
    numbers: new Map(parts.map(({ key, number }) => [key, number])),
    fasteners: new Map(parts.flatMap(({ key, fastener }) => (fastener === null ? [] : [[key, fastener]]))),
    joints: new Map(
      places.flatMap(({ line, position, joint }) => (joint === null ? [] : [[jointKey(line, position), joint]])),
    ),
    lines: new Map(places.map(({ line, lineName }) => [line, lineName])),
    positions: new Map(places.map(({ line, position, name }) => [jointKey(line, position), name])),
  };
}
