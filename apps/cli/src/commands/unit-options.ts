import type { Command } from 'commander';
import type { Day } from '../../../../libs/day';
import type { Book } from '../files/read-book';
import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { Problems } from '../units/problem';
import { readUnit, type GivenUnit } from '../units/read-unit';
import type { Values } from '../units/read-values';
import { collect } from './list-of';
import { evidenceOfOptions, withPlate, type PlateOptions } from './plate-options';

export interface UnitOptions extends PlateOptions {
  readonly line: string;
  readonly model?: string;
  readonly option?: readonly string[];
  readonly serial?: string;
  readonly built?: string;
  readonly builtFrom?: string;
  readonly builtTo?: string;
}

/** Adds the options that describe one unit. */
export function withUnit(command: Command): Command {
  command
    .requiredOption('--line <code>', 'product line')
    .option('--model <number>', 'model number; left out: not known')
    .option('--option <code=yes|no>', 'an option that is fitted or not; not named: not known', collect)
    .option('--serial <number>', 'serial number as on the plate')
    .option('--built <date>', 'build date as precise as it is known: 2017, 2017-03 or 2017-03-14; several joined by |')
    .option('--built-from <day>', 'built on this day or later')
    .option('--built-to <day>', 'built before this day');
  return withPlate(command);
}

/** Options under the names that rows give them. */
export async function valuesOfOptions(options: UnitOptions, around: Surroundings): Promise<Values> {
  return {
    line: options.line,
    model: options.model,
    options: options.option?.join('|'),
    serial: options.serial,
    built: options.built,
    built_from: options.builtFrom,
    built_to: options.builtTo,
    evidence: await evidenceOfOptions(options, around),
  };
}

/** The unit of the options, or a refusal with one sentence for each that is wrong. */
export function unitOfValues(values: Values, book: Book, today: Day): GivenUnit {
  const problems = new Problems();
  const unit = readUnit(values, book, today, problems);
  if (unit === null) throw refusalOf(problems);
  return unit;
}

/** Problems of options, each under the option's own name. */
export function refusalOf({ all }: Problems): Refusal {
  const named = (field: string): string => (field === 'options' ? 'option' : field.replaceAll('_', '-'));
  return new Refusal(all.map(({ field, sentence }) => `--${named(field)}: ${sentence}`));
}
