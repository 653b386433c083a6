import { Injectable, type ArgumentMetadata, type PipeTransform } from '@nestjs/common';
import { isZodDto } from 'nestjs-zod/dto';
import type { z } from 'zod';
import { clip, readShape, type ShapeProblem } from '../../../../libs/shape';
import { ProblemError } from './problem-error';
import { unkeepableText } from './unkeepable-text';

/**
 * Checks every body and query against its contract; the first wrong field is named with what would be accepted. Text
 * that cannot be kept as it is would be kept as something else, or end the statement that writes it.
 */
@Injectable()
export class ValidationPipe implements PipeTransform<unknown> {
  transform(value: unknown, { type, metatype }: ArgumentMetadata): unknown {
    const at = type === 'body' || type === 'query' ? unkeepableText(value) : null;
    if (at === null) return isZodDto(metatype) ? readGiven(metatype.schema as z.ZodType, value) : value;
    const words = 'The text holds a NUL or half of a character, which cannot be kept.';
    throw new ProblemError(400, 'bad-input', at === '' ? words : `${at}: ${words}`, { field: at });
  }
}

/** What was sent, read by its contract; refused with the first wrong field and what would be accepted. */
export function readGiven<S extends z.ZodType>(schema: S, given: unknown): z.output<S> {
  const read = readShape(schema, given);
  if (read.ok) return read.value;
  const [problem] = read.problems;
  const field = problem.path.join('.');
  throw new ProblemError(400, 'bad-input', `${field === '' ? 'What was sent' : `${field}:`} ${wordsOf(problem)}`, {
    field,
  });
}

/** With the value where that is a number or was to be one of several words; any other may be a secret. */
function wordsOf({ words, value }: ShapeProblem): string {
  if (words.endsWith('.')) return words;
  const isTold = typeof value === 'number' || (value !== undefined && words.startsWith('must be one of'));
  return isTold && !words.includes(', not ') ? `${words}, not ${clip(JSON.stringify(value))}.` : `${words}.`;
}
