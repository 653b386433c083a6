import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { FastifyRequest } from 'fastify';
import { ProblemError } from '../http/problem-error';
import { uploadProblem } from '../http/read-upload';

/** The largest file that is taken: some million rows of text. */
export const LARGEST_FILE = 100 * 1024 * 1024;

/** A file that came with a request, on disk until the work is done. */
export interface TakenFile {
  readonly path: string;
  /** As the person's machine calls it, without folders and control characters. */
  readonly name: string;
}

/**
 * Writes the one file of a multipart request to disk, hands it to the work and removes it again, whatever happens.
 * A file that is larger than allowed is refused with 413 as soon as that is known.
 */
export async function withFile<T>(request: FastifyRequest, work: (file: TakenFile) => Promise<T>): Promise<T> {
  if (!request.isMultipart())
    throw new ProblemError(400, 'bad-input', 'Send the file as multipart/form-data, in a field named file.', {
      field: 'file',
    });
  const part = await reading(request.file());
  if (!part)
    throw new ProblemError(400, 'bad-input', 'There is no file in the request; send it in a field named file.', {
      field: 'file',
    });
  const folder = await mkdtemp(join(tmpdir(), 'revright-file-'));
  try {
    // Under a name of our own: what the sender calls it never becomes a path.
    const path = join(folder, 'file');
    await reading(pipeline(part.file, createWriteStream(path)));
    if (part.file.truncated)
      throw new ProblemError(413, 'too-large', `The file is larger than ${LARGEST_FILE / 1024 / 1024} MB; split it.`, {
        field: 'file',
      });
    return await work({ path, name: plainName(part.filename) });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** A request that is cut off or no form at all is the sender's to mend. */
function reading<T>(part: Promise<T>): Promise<T> {
  return part.catch((error: unknown) => {
    throw uploadProblem(error, LARGEST_FILE);
  });
}

function plainName(name: string): string {
  const last = name.split(/[\\/]/).pop() ?? '';
  // eslint-disable-next-line no-control-regex -- these are what is taken out
  return last.replace(/[\u0000-\u001f\u007f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/g, '').slice(-120) || 'file';
}
