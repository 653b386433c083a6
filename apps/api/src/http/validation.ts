import { createZodValidationPipe } from 'nestjs-zod';
import type { ZodError } from 'zod';
import { ProblemError } from './problem-error';

/** Checks every body and query against its contract; the first wrong field is named with what would be accepted. */
export const ValidationPipe = createZodValidationPipe({
  createValidationException: (error: unknown) => {
    const issue = (error as ZodError).issues[0];
    const field = issue?.path.join('.') ?? '';
    const words = issue?.message ?? 'not accepted';
    return new ProblemError(400, 'bad-input', field === '' ? sentence(words) : `${field}: ${sentence(words)}`, {
      field,
    });
  },
});

const sentence = (words: string): string => (words.endsWith('.') ? words : `${words}.`);
