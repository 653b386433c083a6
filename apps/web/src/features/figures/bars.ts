import { count, sayNumber } from '../../lib/say';

/** One bar of a picture: its name, a number for each series, and what is written at its end. */
export interface BarRow {
  readonly label: string;
  readonly values: readonly number[];
  readonly note?: string;
}

/** What a picture shows: stacked bars, one ink and pattern a series. */
export interface BarPicture {
  readonly series: readonly string[];
  readonly rows: readonly BarRow[];
  /** bars lie one under the other, or stand side by side as time passes */
  readonly lie: boolean;
  /** series stand on each other, or beside each other */
  readonly stacked: boolean;
}

/** The picture in words, with every number that is in it. */
export function barsInWords({ series, rows }: BarPicture): string {
  const words = rows.map(({ label, values }) => {
    const parts = values.map((value, at) => `${series[at]!.toLowerCase()} ${value}`);
    return `${label}: ${parts.join(', ')}`;
  });
  return `${words.join('. ')}.`;
}

/** `2 of 3` as `67 %`; nothing where there is no whole. */
export function share(part: number, whole: number): string {
  return whole === 0 ? '' : `${Math.round((part / whole) * 100)} %`;
}

/** Hours as a person says them: `45 min`, `6.5 hours`, `3.2 days`. */
export function sayHours(hours: number | null): string {
  if (hours === null) return 'none';
  if (hours < 1) return `${Math.round(hours * 60)} min`;
  return hours < 48 ? count(hours, 'hour') : `${sayNumber(hours / 24, 1)} days`;
}
