import type { FastifyRequest } from 'fastify';
import { ProblemError } from './problem-error';

/** One file with the text fields that came before it. */
export interface Upload {
  readonly fields: Readonly<Record<string, string>>;
  readonly file: Buffer;
}

/**
 * Reads one file of at most so many bytes from a multipart request, and a few short fields. The name the sender gives
 * the file and the type it claims are not looked at. Refused are other requests, more than one file, and one too large.
 */
export async function readUpload(request: FastifyRequest, field: string, mostBytes: number): Promise<Upload> {
  if (!request.isMultipart()) {
    throw new ProblemError(415, 'not-multipart', `Send the file as multipart/form-data, in a part named '${field}'.`);
  }
  const fields: Record<string, string> = Object.create(null) as Record<string, string>;
  let file: Buffer | null = null;
  const limits = { fileSize: mostBytes, files: 1, fields: 10, fieldSize: 1_000, fieldNameSize: 50, parts: 12 };
  try {
    for await (const part of request.parts({ limits })) {
      if (part.type === 'field') fields[part.fieldname] = String(part.value);
      else file = await part.toBuffer();
    }
  } catch (error) {
    throw uploadProblem(error, mostBytes);
  }
  if (!file || file.length === 0) {
    throw new ProblemError(400, 'bad-input', `There is no file in the part '${field}'.`, { field });
  }
  return { fields, file };
}

/** What was wrong with a multipart request that could not be read; what is no fault of the sender's stays as it is. */
export function uploadProblem(error: unknown, mostBytes: number): unknown {
  const code = (error as { code?: unknown } | null)?.code;
  if (code === 'FST_REQ_FILE_TOO_LARGE') {
    return new ProblemError(413, 'too-large', `The file is larger than ${mostBytes / 1_048_576} MB.`);
  }
  if (typeof code === 'string' && /^FST_(FILES|PARTS|FIELDS)_LIMIT$/.test(code)) {
    return new ProblemError(413, 'too-large', 'Send one file at a time, with the few fields that belong to it.');
  }
  const text = error instanceof Error ? error.message : '';
  // A sender who goes away in the middle is no fault of the program's; the parser then throws what is no error at all.
  if (!(error instanceof Error) || /multipart|boundary|unexpected end|premature|malformed|aborted/i.test(text)) {
    return new ProblemError(400, 'bad-input', 'The multipart request is broken.');
  }
  return error;
}
