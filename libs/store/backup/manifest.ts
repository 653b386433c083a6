import { z } from 'zod';

/** The form of the archive that this program writes; one with a higher number was written by a newer program. */
export const BACKUP_VERSION = 1;

const name = z.string().regex(/^[a-z_][a-z0-9_]{0,62}$/);
const hash = z.string().regex(/^[0-9a-f]{64}$/);
const count = z.number().int().min(0);

const tableSchema = z.object({
  name,
  /** Written and read in this order; columns the database works out itself are left out. */
  columns: z.array(name).min(1),
  rows: count,
  /** Of the rows in the text form of COPY, by their key. */
  sha256: hash,
});

/** What an archive says of itself: enough to tell whether it is whole, and whether this program can read it. */
export const manifestSchema = z.object({
  format: z.literal('revright-backup'),
  version: z.literal(BACKUP_VERSION),
  /** When the snapshot was taken, by the database's clock. */
  takenAt: z.iso.datetime(),
  postgres: z.string(),
  /** The migrations the tables were made by, in order, each with the hash of its text. */
  migrations: z.array(z.object({ name: z.string().max(255), checksum: hash })).min(1),
  /** The newest revision of the rulebook. */
  rulebookRevision: count.nullable(),
  /** The trail of changes: how many rows, and the hash of the last. */
  trail: z.object({ rows: count, head: hash.nullable() }),
  /** A table stands after those its rows refer to. */
  tables: z.array(tableSchema).min(1),
  sequences: z.array(z.object({ name, last: z.string().regex(/^\d{1,19}$/) })),
});

export type Manifest = z.infer<typeof manifestSchema>;
export type TableOfBackup = z.infer<typeof tableSchema>;
