import { Option, type Command } from 'commander';
import { formatDay, parseDay, type Day } from '../../../../libs/day';
import { endOfDayUtc } from '../../../../libs/fit-rules';
import { Refusal } from '../refusal';

/** The three moments a question names. */
export interface Clock {
  /** Bounds build dates from above. */
  readonly today: Day;
  /** The day whose papers are asked for. */
  readonly inForceOn: Day;
  /** What the shop knew then; epoch milliseconds. */
  readonly knownAt: number;
}

export interface ClockOptions {
  readonly today?: string;
  readonly inForceOn?: string;
  readonly knownAt?: string;
}

/** Adds the options that turn the clocks. */
export function withClock(command: Command): Command {
  return command
    .addOption(new Option('--in-force-on <day>', 'ask the papers in force on this day (default: today)'))
    .addOption(
      new Option('--known-at <instant>', 'ask what the shop knew then, such as 2026-03-01T09:30:00Z (default: now)'),
    )
    .addOption(new Option('--today <day>', "take this day as today (default: this computer's date)"));
}

/** Reads the clocks. With `--today` and no `--known-at`, knowledge is that of the end of that day (UTC). */
export function clockOf(options: ClockOptions, now: Date = new Date()): Clock {
  const today = options.today === undefined ? civilToday(now) : dayOfOption('--today', options.today);
  const inForceOn = options.inForceOn === undefined ? today : dayOfOption('--in-force-on', options.inForceOn);
  const usual = options.today === undefined ? now.getTime() : endOfDayUtc(today);
  const knownAt = options.knownAt === undefined ? usual : instantOf(options.knownAt);
  return { today, inForceOn, knownAt };
}

/** Reads a day of an option, or refuses it. */
export function dayOfOption(name: string, text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new Refusal(`${name}: "${text}" is no day: write it as YYYY-MM-DD, such as 2017-03-14.`);
  return day;
}

/** The papers and the knowledge a question is asked by, in a few words. */
export function sayClock({ inForceOn, knownAt }: Clock): string {
  return `by the papers in force on ${formatDay(inForceOn)}, as known at ${new Date(knownAt).toISOString()}`;
}

function civilToday(now: Date): Day {
  const two = (value: number): string => String(value).padStart(2, '0');
  return parseDay(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`)!;
}

function instantOf(text: string): number {
  const instant = Date.parse(text);
  if (/^\d{4}-\d{2}-\d{2}T.*(Z|[+-]\d{2}:\d{2})$/.test(text) && Number.isFinite(instant)) return instant;
  throw new Refusal(`--known-at: "${text}" is no instant: write it with its offset, such as 2026-03-01T09:30:00Z.`);
}
