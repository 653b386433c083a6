import type { DemoShop } from '../../demo';
import type { Db } from '../db';
import { rulebookStore } from '../rulebook/rulebook-store';
import { insertRows } from './insert-rows';

/** Sources and rules, as one revision; answers its number. */
export async function seedRulebook(db: Db, shop: DemoShop): Promise<number> {
  const rulebook = rulebookStore(db);
  await rulebook.alone();
  const sources = shop.sources.map(({ publishedAt, ...source }) => ({
    ...source,
    published_at: publishedAt === null ? null : new Date(publishedAt).toISOString(),
  }));
  const text = {
    key: 'text',
    kind: 'text',
    publisher: 'text',
    number: 'text',
    title: 'text',
    summary: 'text',
    state: 'text',
  };
  const days = { issued: 'date', effective: 'date', received: 'date', published_at: 'timestamptz' };
  await insertRows(db, 'source', { ...text, ...days, draft: 'jsonb' }, sources);
  const { revision } = await rulebook.addRevision({ cause: 'seed', sourceId: null, personId: null });
  await rulebook.open([...shop.rules], revision);
  await db.$executeRaw`UPDATE fit_rule SET closed_by = ${revision}::int WHERE NOT upper_inf(known)`;
  return revision;
}
