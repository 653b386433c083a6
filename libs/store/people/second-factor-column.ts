import { ROLES_WITH_SECOND_FACTOR } from '../../contracts';
import { SECOND_FACTOR_REQUIRED } from '../../usecases';
import { Prisma } from '../generated/client';

/** How the second factor of person `p` stands: on, off, or missing where the shop requires one of the role. */
export const SECOND_FACTOR = Prisma.sql`
  CASE WHEN EXISTS (SELECT FROM second_factor f WHERE f.person_id = p.id AND f.on_since IS NOT NULL) THEN 'on'
       WHEN p.role = ANY (${[...ROLES_WITH_SECOND_FACTOR]}::text[])
            AND EXISTS (SELECT FROM setting s WHERE s.key = ${SECOND_FACTOR_REQUIRED} AND s.value = 'true'::jsonb)
       THEN 'missing' ELSE 'off' END AS "secondFactor"`;
