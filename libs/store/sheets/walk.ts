import type { Db } from '../db';
import { Prisma } from '../generated/client';

/** Rows that are fetched at once. */
const AT_ONCE = 2_000;

/**
 * The answer to a question piece by piece, by a cursor of the transaction. One walk orders the rows once; pages by key
 * would order them anew for each, since the planner knows nothing yet of rows that came a moment ago. What is changed
 * meanwhile is not seen. `name` is that of no other walk under way.
 */
export async function* walk<Row>(db: Db, name: string, question: Prisma.Sql): AsyncGenerator<readonly Row[]> {
  const cursor = Prisma.raw(`"${name}"`);
  await db.$executeRaw`DECLARE ${cursor} NO SCROLL CURSOR FOR ${question}`;
  for (;;) {
    const rows = await db.$queryRaw<Row[]>`FETCH ${Prisma.raw(String(AT_ONCE))} FROM ${cursor}`;
    if (rows.length === 0) break;
    yield rows;
  }
  await db.$executeRaw`CLOSE ${cursor}`;
}

/** The same pieces, cut so that rows of one group, which stand together, come together. */
export async function* wholeGroups<Row>(
  pieces: AsyncIterable<readonly Row[]>,
  keyOf: (row: Row) => string,
): AsyncGenerator<readonly Row[]> {
  let held: readonly Row[] = [];
  for await (const piece of pieces) {
    const next = keyOf(piece[0]!);
    let cut = held.length;
    while (cut > 0 && keyOf(held[cut - 1]!) === next) cut--;
    if (cut > 0) yield held.slice(0, cut);
    held = cut === held.length ? piece : [...held.slice(cut), ...piece];
  }
  if (held.length > 0) yield held;
}
