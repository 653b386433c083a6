import { Option, type Command } from 'commander';
import { verdicts, type Verdict } from '../../../../libs/fit-rules';
import { openInput } from '../files/open-input';
import { openOutput } from '../files/output';
import { Progress } from '../files/progress';
import { readBook } from '../files/read-book';
import { openTable, type Table } from '../files/read-table';
import { csvHeading, csvText, jsonLinesText, type OutRow } from '../files/write-rows';
import { ANSWER_IS_NO, BAD_INPUT, FINE } from '../refusal';
import type { Surroundings } from '../surroundings';
import { clockOf, withClock, type ClockOptions } from './clock';
import { BARE_COLUMNS, REASONS, RESULT_COLUMNS, type Reasons } from './judge-rows';
import { answerColumns, judgedRows, Tally } from './judge-table';
import { listOf } from './list-of';

const HELP = `
A row is one part in one place of one unit. The columns, in any order; other columns are handed through:
  line         product line                                   required
  position     position code                                  required
  part         as printed, or MAKER/NUMBER; several that it can be joined by |; blank: cannot be told
  model        model number                                   blank: not known
  options      heated-grips=yes|heavy-housing=no              not named: not known
  serial       as on the plate
  built        2017, 2017-03, 2017-W09 or 2017-03-14; several joined by |
  built_from, built_to   days, the second not included        built and both blank: by serial and production
  fitted_on    YYYY-MM-DD                                     blank: came with the unit
The answer adds: ${RESULT_COLUMNS.join(', ')}.
CSV (comma, semicolon or tab; UTF-8) and JSON lines are told apart by their first character.
A row that cannot be read is named on stderr and left out of the answer; the exit code is then 2.

Examples:
  $ revright judge rulebook.json installs.csv --out verdicts.csv
  $ revright judge rulebook.json installs.csv --fail-on wrong,outdated > verdicts.csv
  $ revright judge rulebook.json installs.jsonl --format json --reasons all
  $ cat installs.csv | revright judge rulebook.json - --reasons none`;

interface JudgeOptions extends ClockOptions {
  readonly format?: 'csv' | 'json';
  readonly out?: string;
  readonly reasons: Reasons;
  readonly failOn?: readonly Verdict[];
  readonly quiet?: boolean;
}

/** `judge`: a rulebook and a table of installs in, verdicts out; any size in flat memory. */
export function judgeCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  const command = program
    .command('judge <rulebook> <installs>')
    .summary('judge every row of a table of installed parts')
    .description('Judges every row of a table of installed parts; "-" reads the table from stdin.')
    .addOption(
      new Option('--format <format>', 'csv, or json for JSON lines (default: as the table)').choices(['csv', 'json']),
    )
    .option('--out <file>', 'write here instead of stdout; the file appears when it is whole')
    .addOption(
      new Option('--reasons <rows>', 'rows that get reasons beside the verdict').choices(REASONS).default('doubtful'),
    )
    .option('--fail-on <verdicts>', `exit with 1 if a row gets one of these: ${verdicts.join(', ')}`, listOf(verdicts))
    .option('--quiet', 'no summary on stderr');
  withClock(command)
    .addHelpText('after', HELP)
    .action(async (rulebook: string, installs: string, options: JudgeOptions) => {
      end(await judge(rulebook, installs, options, around));
    });
}

async function judge(path: string, installs: string, options: JudgeOptions, around: Surroundings): Promise<number> {
  const clock = clockOf(options);
  const book = await readBook(path, around);
  const input = openInput(installs, around);
  const tally = new Tally();
  const progress = new Progress(around.stderr, input.size);
  const table = await openTable(input, (bytes) => progress.add(bytes, tally.rows));
  const complain = (line: string): void => {
    progress.end();
    around.stderr.write(`${line}\n`);
  };
  const rows = judgedRows(table, { book, clock, reasons: options.reasons }, tally, complain);
  try {
    await writeRows(rows, table, options, around);
  } finally {
    progress.end();
  }
  if (!options.quiet) complain(tally.say());
  if (tally.bad > 0) return BAD_INPUT;
  return options.failOn?.some((verdict) => tally.of(verdict) > 0) ? ANSWER_IS_NO : FINE;
}

async function writeRows(
  rows: AsyncIterable<readonly OutRow[]>,
  table: Table,
  options: JudgeOptions,
  around: Surroundings,
): Promise<void> {
  const { titles, keys } = answerColumns(table, options.reasons === 'none' ? BARE_COLUMNS : RESULT_COLUMNS);
  const csv = (options.format ?? (table.kind === 'csv' ? 'csv' : 'json')) === 'csv';
  const text = (batch: readonly OutRow[]) => (csv ? csvText(keys, batch, table.delimiter) : jsonLinesText(batch));
  const output = openOutput(options.out, around);
  try {
    if (csv) await output.write(csvHeading(titles, table.delimiter));
    for await (const batch of rows) if (batch.length > 0) await output.write(text(batch));
    await output.keep();
  } catch (error) {
    output.drop();
    throw error;
  }
}
