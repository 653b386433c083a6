import { Prisma } from '../generated/client';

/** The short name of a unit in lists, from its maker `k`, model `m` and line `l`: the model's own name goes before the line's. */
export const UNIT_NAME = Prisma.sql`coalesce(k.name || ' ' || coalesce(m.name, l.name), 'Unit not identified')`;
