import { AsyncLocalStorage } from 'node:async_hooks';
import { Readable } from 'node:stream';
import { StreamableFile } from '@nestjs/common';

export const CSV = 'text/csv';
export const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** A file to be saved, never shown: under a name of ours. */
export function download(content: AsyncIterable<string> | Buffer, name: string, type: string): StreamableFile {
  const about = {
    type: type === CSV ? 'text/csv; charset=utf-8' : type,
    disposition: `attachment; filename="${name}"`,
  };
  return Buffer.isBuffer(content)
    ? new StreamableFile(content, about)
    : new StreamableFile(Readable.from(asNow(content)), about);
}

/** The rows are asked for while the answer is sent, long after the handler is done, and still in the person's name. */
function asNow<T>(content: AsyncIterable<T>): AsyncIterable<T> {
  const asPerson = AsyncLocalStorage.snapshot();
  return {
    [Symbol.asyncIterator]: () => {
      const rows = content[Symbol.asyncIterator]();
      return {
        next: () => asPerson(() => rows.next()),
        return: async () => ({ done: true, value: await rows.return?.() }),
      };
    },
  };
}
