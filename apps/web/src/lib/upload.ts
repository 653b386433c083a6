import type { z } from 'zod';
import { address } from './api-client';
import { ApiProblem, NO_CONNECTION, OTHER_AGE, readProblem } from './problem';

/** Sends a file with its fields; the fields go first, as the server reads them before the file. */
export async function upload<T>(
  schema: z.ZodType<T>,
  path: string,
  fields: Record<string, string>,
  file: File,
): Promise<T> {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  form.set('photo', file);
  const response = await fetch(address(path), { method: 'POST', credentials: 'same-origin', body: form }).catch(() => {
    throw new ApiProblem(NO_CONNECTION);
  });
  const body: unknown = await response.json().catch(() => null);
  if (!response.ok) throw new ApiProblem(readProblem(response.status, body));
  const parsed = schema.safeParse(body);
  if (parsed.success) return parsed.data;
  throw new ApiProblem(OTHER_AGE, parsed.error);
}
