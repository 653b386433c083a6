import { verdicts, type Verdict } from '../../../../libs/fit-rules';
import type { Book } from '../files/read-book';
import { columnName, type Table } from '../files/read-table';
import type { OutRow } from '../files/write-rows';
import { Problems, type ValueProblem } from '../units/problem';
import { readInstall } from '../units/read-install';
import { PartReader } from '../units/read-part';
import type { Clock } from './clock';
import { RESULT_COLUMNS, RowJudge, type Reasons } from './judge-rows';

/** Rows named on stderr; more are only counted. */
const MOST_NAMED = 100;

/** How many rows got which verdict. */
export class Tally {
  bad = 0;
  private readonly counts = new Map<Verdict, number>();

  get rows(): number {
    return [...this.counts.values()].reduce((sum, count) => sum + count, this.bad);
  }

  of(verdict: Verdict): number {
    return this.counts.get(verdict) ?? 0;
  }

  add(verdict: Verdict): void {
    this.counts.set(verdict, this.of(verdict) + 1);
  }

  /** The run in one sentence. */
  say(): string {
    const judged = verdicts.filter((one) => this.of(one) > 0).map((one) => `${number(this.of(one))} ${one}`);
    const unread = this.bad === 0 ? '' : `; ${number(this.bad)} could not be read and are left out`;
    const rows = this.rows - this.bad;
    return `${number(rows)} ${rows === 1 ? 'row' : 'rows'} judged${judged.length > 0 ? `: ${judged.join(', ')}` : ''}${unread}.`;
  }
}

/** The columns of an answer: those of the table, without verdicts of an earlier run, then the results. */
export function answerColumns(
  table: Table,
  results: readonly string[],
): { readonly titles: readonly string[]; readonly keys: readonly string[] } {
  const kept = table.columns.filter((title) => !(RESULT_COLUMNS as readonly string[]).includes(columnName(title)));
  return { titles: [...kept, ...results], keys: [...kept.map(columnName), ...results] };
}

/** Judges a table batch by batch; rows that cannot be read are told to `complain` with file, line and column. */
export async function* judgedRows(
  table: Table,
  { book, clock, reasons }: { book: Book; clock: Clock; reasons: Reasons },
  tally: Tally,
  complain: (line: string) => void,
): AsyncGenerator<readonly OutRow[]> {
  const judge = new RowJudge(book, clock, reasons);
  const context = { book, parts: new PartReader(book), today: clock.today };
  for await (const batch of table.rows) {
    const judged: OutRow[] = [];
    for (const row of batch) {
      const problems = new Problems();
      const install = 'problem' in row ? problems.add('', row.problem) : readInstall(row.values, context, problems);
      if (install === null || 'problem' in row) {
        tally.bad++;
        tellProblems(table, row.line, problems.all, tally.bad, complain);
        continue;
      }
      const result = judge.result(install);
      tally.add(result.verdict);
      // The row is ours alone and done with: adding to it is several times cheaper than copying it.
      judged.push(Object.assign(row.values, result));
    }
    yield judged;
  }
}

function tellProblems(
  { name, kind }: Table,
  line: number,
  problems: readonly ValueProblem[],
  bad: number,
  complain: (line: string) => void,
): void {
  if (bad === MOST_NAMED + 1) complain(`${name}: more rows cannot be read; only their number is told.`);
  if (bad > MOST_NAMED) return;
  const word = kind === 'csv' ? 'column' : 'field';
  for (const { field, sentence } of problems)
    complain(`${name}:${line}: ${field === '' ? '' : `${word} ${field}: `}${sentence}`);
}

function number(count: number): string {
  return count.toLocaleString('en');
}
