import type { Command } from 'commander';
import { Refusal } from '../refusal';

/**
 * An option or argument that was given and holds nothing is a slip, such as a variable of a script that is not set.
 * Taken for "not given" it would be answered as another question than the one that was asked.
 */
export function refuseEmpty(command: Command): void {
  const problems = [
    ...command.registeredArguments.flatMap((argument, at) =>
      isEmpty(command.processedArgs[at])
        ? [`<${argument.name()}> is "${String(command.processedArgs[at])}", but must name something.`]
        : [],
    ),
    ...command.options.flatMap((option) =>
      isEmpty(command.getOptionValue(option.attributeName()))
        ? [`${option.long ?? option.flags}: is given and empty; give a value, or leave the option out.`]
        : [],
    ),
  ];
  if (problems.length > 0) throw new Refusal(problems);
}

function isEmpty(value: unknown): boolean {
  return Array.isArray(value) ? value.some(isEmpty) : typeof value === 'string' && value.trim() === '';
}
