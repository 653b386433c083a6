import { Option, type Command } from 'commander';
import { EVIDENCE_KINDS, whatWouldSettle } from '../../../../libs/build-date';
import { day, type Day } from '../../../../libs/day';
import {
  auditRulebook,
  findingSeverities,
  type AuditContext,
  type AuditLine,
  type Finding,
  type FindingSeverity,
} from '../../../../libs/fit-rules';
import { writeAnswer } from '../files/output';
import { readBook, type Book, type BookLine } from '../files/read-book';
import { csvHeading, csvText } from '../files/write-rows';
import { ANSWER_IS_NO, FINE } from '../refusal';
import type { Surroundings } from '../surroundings';
import { clockOf, sayClock, withClock, type Clock, type ClockOptions } from './clock';
import { unknownNames, type NameFinding } from './unknown-names';

const HELP = `
Every position of every line is swept over every boundary of its rules: gaps, disputes, dead parts, rings of
supersessions, papers that are missing or withdrawn, names that nothing bears, boundaries that no evidence can tell.
Exits with 1 when there is a finding of the chosen severity or a worse one.

Examples:
  $ revright check-rules rulebook.json
  $ revright check-rules rulebook.json --severity warning --line DRIFTBREAK
  $ revright check-rules rulebook.json --severity note --format csv --out findings.csv
  $ revright check-rules rulebook.json --in-force-on 2027-01-01`;

interface CheckOptions extends ClockOptions {
  readonly severity: FindingSeverity;
  readonly line?: string;
  readonly format: 'text' | 'csv' | 'json';
  readonly out?: string;
}

type Found = Finding | NameFinding;

/** `check-rules`: a rulebook in, everything a person should mend out. */
export function checkRulesCommand(program: Command, around: Surroundings, end: (code: number) => void): void {
  const command = program
    .command('check-rules <rulebook>')
    .summary('audit a rulebook')
    .description('Looks over a whole rulebook and tells what should be mended; exits with 1 on findings.')
    .addOption(
      new Option('--severity <least>', 'least severity that is told and counted')
        .choices(findingSeverities)
        .default('error'),
    )
    .option('--line <code>', 'tell findings of this product line only');
  withClock(command)
    .addOption(new Option('--format <format>', 'form of the answer').choices(['text', 'csv', 'json']).default('text'))
    .option('--out <file>', 'write here instead of stdout')
    .addHelpText('after', HELP)
    .action(async (rulebook: string, options: CheckOptions) => end(await check(rulebook, options, around)));
}

async function check(path: string, options: CheckOptions, around: Surroundings): Promise<number> {
  const clock = clockOf(options);
  const book = await readBook(path, around);
  const all: readonly Found[] = [
    ...unknownNames(book),
    ...auditRulebook(book.rulebook, contextOf(book, clock), { ...book.naming(), position: (code) => code }),
  ];
  const worst = findingSeverities.indexOf(options.severity);
  const told = all.filter(
    ({ severity, line }) =>
      findingSeverities.indexOf(severity) <= worst && (options.line === undefined || line === options.line),
  );
  await writeAnswer(options.out, around, FORMS[options.format](told, options.severity, clock));
  return told.length > 0 ? ANSWER_IS_NO : FINE;
}

function contextOf(book: Book, clock: Clock): AuditContext {
  const { document, parts } = book;
  return {
    inForceOn: clock.inForceOn,
    knownAt: clock.knownAt,
    lines: [...book.lines.values()].map((line) => auditLine(line, book, clock.today)),
    catalogue: parts.size === 0 ? null : new Set(parts.keys()),
    withdrawnSources: new Set(
      document.sources
        .filter(({ withdrawn }) => withdrawn !== null && Date.parse(withdrawn.at) <= clock.knownAt)
        .map(({ key }) => key),
    ),
    ...(document.serialSchemes.length > 0 && { canTellApart: tellerOf(book, clock.today) }),
  };
}

/** A line that is still made is looked at up to today. */
function auditLine({ entry, positions, models }: BookLine, { document }: Book, today: Day): AuditLine {
  const { code, maker, producedFrom, producedUntil } = entry;
  const schemes = document.serialSchemes.filter(
    (one) => one.maker === maker && (one.lines.length === 0 || one.lines.includes(code)),
  );
  return {
    line: code,
    positions: [...positions.keys()],
    models: [...models],
    schemes: schemes.map(({ id }) => id),
    production: { from: day(producedFrom), to: producedUntil === null ? today + 1 : day(producedUntil) },
  };
}

/** Whether a serial or a date printed on the plate can tell a day from the day before. */
function tellerOf({ lines, shop }: Book, today: Day): (line: string, boundary: Day) => boolean {
  const missing = EVIDENCE_KINDS.filter((kind) => kind === 'serial-scheme' || kind === 'printed-date');
  return (line, boundary) => {
    const cuts = [
      { days: [{ from: boundary - 1, to: boundary }], outcome: 'before' },
      { days: [{ from: boundary, to: boundary + 1 }], outcome: 'after' },
    ];
    const { maker } = lines.get(line)!.entry;
    return whatWouldSettle({ cuts, missing, maker, line, shop, today }).kinds.length > 0;
  };
}

type Form = (findings: readonly Found[], severity: FindingSeverity, clock: Clock) => string;

const FORMS: Readonly<Record<CheckOptions['format'], Form>> = {
  text: (findings, severity, clock) => {
    const count = `${findings.length} ${findings.length === 1 ? 'finding' : 'findings'}`;
    const worse = severity === 'error' ? '' : ' or worse';
    const end = `${count} of severity ${severity}${worse}, ${sayClock(clock)}.`;
    return [...findings.map((one) => `${one.severity}: ${one.sentence} ${one.mend}`), end].join('\n');
  },
  csv: (findings) => {
    const columns = ['severity', 'code', 'line', 'position', 'rule', 'sentence', 'mend'];
    const rows = findings.map((one) => ({ ...one, rule: one.rules.map(({ key }) => key).join('|') }));
    return csvHeading(columns) + csvText(columns, rows);
  },
  json: (findings) =>
    JSON.stringify(
      findings.map(({ severity, code, line, position, rules, sentence, mend }) => {
        return { severity, code, line, position, rules, sentence, mend };
      }),
      null,
      2,
    ),
};
