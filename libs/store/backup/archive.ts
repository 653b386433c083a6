import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { pipeline } from 'node:stream/promises';
import { createGunzip, createGzip } from 'node:zlib';
import { extract, pack, type Pack } from 'tar-stream';
import { manifestSchema, BACKUP_VERSION, type Manifest } from './manifest';
import { readShape, sayAt } from '../../shape';

/*
 * A backup is a tar archive, packed by gzip: `tables/<table>/<n>.copy`, the rows of each table in the text form of COPY, cut
 * between two rows; then `manifest.json`, and `manifest.sha256` with the hash of that.
 */

const MANIFEST = 'manifest.json';
const MANIFEST_HASH = 'manifest.sha256';
const PIECE = /^tables\/([a-z_][a-z0-9_]*)\/\d+\.copy$/;
const MOST_MANIFEST_BYTES = 10_000_000;

/** Puts a file into the archive; resolves when there is room for the next. */
export type Put = (name: string, content: Buffer) => Promise<void>;

/** Puts a piece of a table into the archive. */
export const pieceName = (table: string, n: number): string => `tables/${table}/${String(n).padStart(6, '0')}.copy`;

/**
 * Writes an archive, for its owner's eyes alone. It stands under its name only once it is whole, on the disk, and was read
 * again; what was broken off, or reads otherwise than it was written, is removed. Answers what was read.
 */
export async function writeArchive(file: string, fill: (put: Put) => Promise<Manifest>): Promise<Manifest> {
  const draft = `${file}.part`;
  const archive = pack();
  const written = pipeline(archive, createGzip(), createWriteStream(draft, { flags: 'wx', mode: 0o600 }));
  // Its failure is heard below, or has ended the filling before.
  written.catch((error: Error) => archive.destroy(error));
  try {
    const put = putInto(archive);
    const manifest = await fill(put);
    const text = Buffer.from(`${JSON.stringify(manifest, null, 2)}\n`);
    await put(MANIFEST, text);
    await put(MANIFEST_HASH, Buffer.from(`${hashOf(text)}\n`));
    archive.finalize();
    await written;
    await toDisk(draft);
    const read = await checkArchive(draft);
    await rename(draft, file);
    return read;
  } catch (error) {
    archive.destroy();
    await written.catch(() => undefined);
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') await rm(draft, { force: true });
    throw error;
  }
}

const putInto =
  (archive: Pack): Put =>
  (name, content) =>
    new Promise((done, failed) => {
      archive.entry({ name, mode: 0o600, size: content.length }, content, (error) => (error ? failed(error) : done()));
    });

async function toDisk(file: string): Promise<void> {
  const handle = await open(file, 'r+');
  await handle.sync().finally(() => handle.close());
}

const hashOf = (content: Buffer): string => createHash('sha256').update(content).digest('hex');

/** What is wrong with a file that is no whole archive, in one sentence. */
export class ArchiveRefused extends Error {}

/** Reads through the archive; each piece of a table is told as a stream that must be read to its end. */
async function readThrough(
  file: string,
  onPiece: (table: string, piece: Readable) => Promise<void>,
): Promise<ReadonlyMap<string, Buffer>> {
  const others = new Map<string, Buffer>();
  const entries = extract();
  const reading = pipeline(createReadStream(file), createGunzip(), entries);
  reading.catch(() => undefined);
  try {
    for await (const entry of entries) {
      const table = PIECE.exec(entry.header.name)?.[1];
      if (table !== undefined) await onPiece(table, Readable.from(entry as AsyncIterable<Buffer>));
      else if ((entry.header.size ?? 0) <= MOST_MANIFEST_BYTES)
        others.set(entry.header.name, await buffer(entry as AsyncIterable<Buffer>));
      else throw new ArchiveRefused(`${file} is no backup: it holds ${entry.header.name}, which no backup does.`);
    }
    await reading;
  } catch (error) {
    throw refusalOf(file, error as NodeJS.ErrnoException);
  }
  return others;
}

function refusalOf(file: string, error: NodeJS.ErrnoException): Error {
  if (error.code === 'ENOENT') return new ArchiveRefused(`There is no file ${file}.`);
  if (error.code === 'Z_BUF_ERROR')
    return new ArchiveRefused(`${file} is cut short: it ends before the backup does; take another, or copy it anew.`);
  const damaged = error.code?.startsWith('Z_') || /end of data|tar header|checksum/i.test(error.message);
  return damaged ? new ArchiveRefused(`${file} is damaged, or no backup (${error.message}).`) : error;
}

/**
 * Reads the whole archive and compares everything with the checksums in it, before anything is done with it. Answers what
 * it says of itself; throws an {@link ArchiveRefused} when it is not whole.
 */
export async function checkArchive(file: string): Promise<Manifest> {
  const found = new Map<string, { readonly hash: ReturnType<typeof createHash>; rows: number }>();
  const others = await readThrough(file, async (table, piece) => {
    const sum = found.get(table) ?? { hash: createHash('sha256'), rows: 0 };
    found.set(table, sum);
    for await (const bytes of piece as AsyncIterable<Buffer>) {
      sum.hash.update(bytes);
      sum.rows += rowsIn(bytes);
    }
  });
  const manifest = manifestOf(file, others);
  for (const { name, rows, sha256 } of manifest.tables) {
    const sum = found.get(name) ?? { hash: createHash('sha256'), rows: 0 };
    found.delete(name);
    if (sum.rows !== rows || sum.hash.digest('hex') !== sha256)
      throw new ArchiveRefused(`${file} is damaged: its table ${name} is not as it was written.`);
  }
  const [stranger] = found.keys();
  if (stranger !== undefined) throw new ArchiveRefused(`${file} is damaged: it does not name its table ${stranger}.`);
  return manifest;
}

function manifestOf(file: string, others: ReadonlyMap<string, Buffer>): Manifest {
  const [text, hash] = [others.get(MANIFEST), others.get(MANIFEST_HASH)];
  if (!text || !hash) throw new ArchiveRefused(`${file} is no whole backup: its ${MANIFEST} is missing.`);
  if (hashOf(text) !== hash.toString('utf8').trim())
    throw new ArchiveRefused(`${file} is damaged: its ${MANIFEST} is not as it was written.`);
  const said: unknown = JSON.parse(text.toString('utf8'));
  const version = (said as { version?: unknown }).version;
  if (typeof version === 'number' && version > BACKUP_VERSION)
    throw new ArchiveRefused(
      `${file} is a backup of form ${version}, written by a newer Revright; this one reads form ${BACKUP_VERSION}.`,
    );
  const read = readShape(manifestSchema, said);
  if (!read.ok)
    throw new ArchiveRefused(`${file} is no backup of Revright: in its ${MANIFEST}, ${sayAt(read.problems[0])}`);
  return read.value;
}

/** Rows in the text form of COPY: a line end inside a value is written as two other characters. */
export function rowsIn(bytes: Buffer): number {
  let rows = 0;
  for (let at = bytes.indexOf(10); at !== -1; at = bytes.indexOf(10, at + 1)) rows++;
  return rows;
}

/** Goes through an archive that was checked, piece by piece, each a stream of whole rows. */
export const eachPiece = (file: string, onPiece: (table: string, piece: Readable) => Promise<void>): Promise<unknown> =>
  readThrough(file, onPiece);
