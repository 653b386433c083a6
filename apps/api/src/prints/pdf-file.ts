import { StreamableFile } from '@nestjs/common';
import type { PrintedFile } from '../../../../libs/usecases';

/** A print as the browser shows it, under its own name when it is kept. */
export function pdfFile({ name, bytes }: PrintedFile): StreamableFile {
  return new StreamableFile(bytes, {
    type: 'application/pdf',
    disposition: `inline; filename="${name}"`,
    length: bytes.length,
  });
}
