import type { Command } from 'commander';
import { rulebookJsonSchema } from '../../../../libs/contracts';
import { writeAnswer } from '../files/output';
import { FINE } from '../refusal';
import type { Surroundings } from '../surroundings';

/** `schema`: the JSON Schema of rulebook files. */
export function schemaCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  program
    .command('schema')
    .summary('print the JSON Schema of rulebook files')
    .description('Prints the JSON Schema (draft 2020-12) of rulebook files, for an editor or another program.')
    .option('--out <file>', 'write here instead of stdout')
    .addHelpText('after', '\nExample:\n  $ revright schema --out rulebook.schema.json')
    .action(async (options: { out?: string }) => {
      await writeAnswer(options.out, around, JSON.stringify(rulebookJsonSchema(), null, 2));
      end(FINE);
    });
}
