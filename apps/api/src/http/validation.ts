import type { ArgumentMetadata } from '@nestjs/common';
import { createZodValidationPipe } from 'nestjs-zod';
import type { ZodError } from 'zod';
import { ProblemError } from './problem-error';
import { unkeepableText } from './unkeepable-text';

const ContractPipe = createZodValidationPipe({
  createValidationException: (error: unknown) => {
    const issue = (error as ZodError).issues[0];
    const field = issue?.path.join('.') ?? '';
    const words = issue?.message ?? 'not accepted';
    return new ProblemError(400, 'bad-input', field === '' ? sentence(words) : `${field}: ${sentence(words)}`, {
      field,
    });
  },
});

/**
 * Checks every body and query against its contract; the first wrong field is named with what would be accepted. Text
 * that cannot be kept as it is would be kept as something else, or end the statement that writes it.
 */
export class ValidationPipe extends ContractPipe {
  override transform(value: unknown, metadata: ArgumentMetadata): unknown {
    const at = metadata.type === 'body' || metadata.type === 'query' ? unkeepableText(value) : null;
    if (at === null) return super.transform(value, metadata) as unknown;
    const words = 'The text holds a NUL or half of a character, which cannot be kept.';
    throw new ProblemError(400, 'bad-input', at === '' ? words : `${at}: ${words}`, { field: at });
  }
}

const sentence = (words: string): string => (words.endsWith('.') ? words : `${words}.`);
