import { escapeLiteral } from 'pg';
import type { Prisma } from '../../generated/client';

/**
 * The statement with its values written into it: COPY takes no parameters. Only numbers, texts, null and arrays of whole
 * numbers or texts; anything else is an error.
 */
export function literalSql({ strings, values }: Prisma.Sql): string {
  return strings.reduce((text, piece, i) => `${text}${literal(values[i - 1])}${piece}`);
}

function literal(value: unknown): string {
  if (value === null) return 'NULL';
  if (typeof value === 'number' && Number.isFinite(value)) return value < 0 ? `(${value})` : String(value);
  if (typeof value === 'string') return escapeLiteral(value);
  if (Array.isArray(value)) return escapeLiteral(`{${value.map(element).join(',')}}`);
  throw new Error(`a ${typeof value} cannot be written into a statement`);
}

function element(value: unknown): string {
  if (Number.isInteger(value)) return String(value);
  if (typeof value === 'string') return JSON.stringify(value);
  throw new Error(`a ${typeof value} cannot be written into an array`);
}
