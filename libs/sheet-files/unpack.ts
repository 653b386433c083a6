import { openPromise, type Entry, type ZipFile } from 'yauzl';
import { SheetRefused } from './refusal';

const MOST_ENTRIES = 2_000;
/** All of a workbook unpacked. What says that it is more is refused before anything is unpacked. */
const MOST_UNPACKED = 1024 ** 3;

/** An archive on disk. Its entries are unpacked piece by piece, each when it is asked for. */
export class Archive {
  private constructor(
    private readonly file: ZipFile,
    private readonly entries: ReadonlyMap<string, Entry>,
  ) {}

  /** Reads the list of its entries. One that is broken, has a password or says that it unpacks too far is refused. */
  static async open(path: string): Promise<Archive> {
    // Closed by us: an entry is read when it is asked for, and more than once.
    const file = await openPromise(path, { autoClose: false, lazyEntries: true }).catch(refuse);
    try {
      return new Archive(file, await entriesOf(file));
    } catch (error) {
      file.close();
      throw error;
    }
  }

  close(): void {
    this.file.close();
  }

  has(name: string): boolean {
    return this.entries.has(name);
  }

  /**
   * The entry as text, piece by piece; nothing where there is none. Ends with a refusal where it is broken, or where more
   * comes out than its head says.
   */
  async *text(name: string): AsyncGenerator<string> {
    const entry = this.entries.get(name);
    if (!entry) return;
    const decoder = new TextDecoder();
    try {
      for await (const piece of await this.file.openReadStreamPromise(entry))
        yield decoder.decode(piece as Buffer, { stream: true });
    } catch (error) {
      refuse(error);
    }
    yield decoder.decode();
  }
}

async function entriesOf(file: ZipFile): Promise<ReadonlyMap<string, Entry>> {
  if (file.entryCount > MOST_ENTRIES)
    throw new SheetRefused(`The workbook holds ${file.entryCount} files; a workbook holds at most ${MOST_ENTRIES}.`);
  const entries = new Map<string, Entry>();
  let unpacked = 0;
  try {
    for await (const entry of file.eachEntry()) {
      if (entry.isEncrypted()) throw new SheetRefused('The workbook has a password; save it without one.');
      entries.set(entry.fileName, entry);
      unpacked += entry.uncompressedSize;
    }
  } catch (error) {
    refuse(error);
  }
  if (unpacked > MOST_UNPACKED)
    throw new SheetRefused('The workbook unpacks to more than 1 GB; save its sheet as CSV, or split it.', true);
  return entries;
}

/** What is said of a workbook that cannot be read as one. */
export const broken = () =>
  new SheetRefused('The workbook is broken or no workbook; open it in a spreadsheet and save it again.');

function refuse(error: unknown): never {
  if (error instanceof SheetRefused) throw error;
  if (error instanceof Error && error.message.startsWith('too many bytes in the stream'))
    throw new SheetRefused('The workbook unpacks to more than it says; save its sheet as CSV.', true);
  throw broken();
}
