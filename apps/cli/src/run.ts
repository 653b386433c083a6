import { Command, CommanderError } from 'commander';
import { checkRulesCommand } from './commands/check-rules';
import { dateCommand } from './commands/date';
import { exampleCommand } from './commands/example';
import { explainCommand } from './commands/explain';
import { judgeCommand } from './commands/judge';
import { refuseEmpty } from './commands/refuse-empty';
import { schemaCommand } from './commands/schema';
import { torqueCommand } from './commands/torque';
import { whichCommand } from './commands/which';
import { BAD_INPUT, FINE, Refusal } from './refusal';
import type { Surroundings } from './surroundings';

const HELP = `
Files in, files out; no server and no database. The rulebook file is described in docs/formats.md.

Exit codes: 0 all is well, 1 the answer is 'no' (findings, or a verdict asked for with --fail-on),
2 bad use or bad input (one sentence on stderr with file, line and column).

First steps:
  $ revright example rulebook > rulebook.json
  $ revright example installs > installs.csv
  $ revright judge rulebook.json installs.csv

The answers advise and certify nothing: the maker's papers, local rules and a licensed technician come first.`;

const COMMANDS = [
  judgeCommand,
  whichCommand,
  dateCommand,
  torqueCommand,
  checkRulesCommand,
  explainCommand,
  exampleCommand,
  schemaCommand,
];

/** Runs one command line (without the program's own name) and gives back its exit code; see the help for the three. */
export async function run(args: readonly string[], around: Surroundings): Promise<number> {
  let code = FINE;
  const program = programFor(around, (ended) => (code = ended));
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? FINE : BAD_INPUT;
    if (!(error instanceof Refusal)) throw error;
    for (const line of error.lines) around.stderr.write(`${line}\n`);
    return BAD_INPUT;
  }
}

function programFor(around: Surroundings, end: (code: number) => void): Command {
  const program = new Command('revright')
    .description('Which part revision is right for this build date, by the papers of a day.')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void around.stdout.write(text),
      writeErr: (text) => void around.stderr.write(text),
    })
    .showSuggestionAfterError()
    .helpCommand(true)
    .hook('preAction', (_, command) => refuseEmpty(command))
    .addHelpText('after', HELP);
  for (const add of COMMANDS) add(program, around, end);
  return program;
}
