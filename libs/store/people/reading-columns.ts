import { PRINTS } from '../../usecases';
import { Prisma } from '../generated/client';

/** How person `p` chose to read the page, and what the shop has settled where nobody chose. */
export const READING = Prisma.sql`
  p.reading AS "ownReading", (SELECT value FROM setting WHERE key = ${PRINTS}) AS "shopPrints"`;
