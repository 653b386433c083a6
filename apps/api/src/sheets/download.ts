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
    : new StreamableFile(Readable.from(content), about);
}
