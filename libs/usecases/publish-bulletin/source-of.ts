import { sourceFromFile, type Source } from '../../fit-rules';
import type { BulletinRecord } from '../ports/bulletin-store';

/** The paper behind a bulletin, as the fit rules know it. */
export function sourceOf(bulletin: BulletinRecord): Source {
  const { key, kind, publisher, number, title, issued, effective, received } = bulletin;
  return sourceFromFile({ key, kind, publisher, number, title, issued, effective, received });
}
