import type { LabourLine } from '../../../../../libs/contracts';
import { priceOfTime } from '../../../../../libs/ticket';
import { readMoney } from '../../lib/say';

/** A line of labour as it is being written. */
export interface TypedLine {
  kind: LabourLine['kind'];
  what: string;
  minutes: string;
  money: string;
}

export const emptyLine = (): TypedLine => ({ kind: 'labour', what: 'Work at the bench', minutes: '', money: '' });

const moneyText = (minor: number): string => (minor / 100).toFixed(2);

export function typedLines(lines: readonly LabourLine[]): TypedLine[] {
  if (lines.length === 0) return [emptyLine()];
  return lines.map(({ kind, what, minutes, minor }) => ({
    kind,
    what,
    minutes: minutes === 0 ? '' : String(minutes),
    money: moneyText(minor),
  }));
}

/** New minutes bring their price by the hour along, unless somebody has set another price. */
export function withMinutes(line: TypedLine, minutes: string, hourMinor: number): TypedLine {
  const usual = (text: string) => moneyText(priceOfTime(Number(text) || 0, hourMinor));
  const untouched = line.money === '' || line.money === usual(line.minutes);
  const whole = minutes === '' || /^\d{1,5}$/.test(minutes);
  return { ...line, minutes, money: hourMinor > 0 && untouched && whole ? usual(minutes) : line.money };
}

/** The lines as they are kept, those without minutes and money left out; null while one cannot be read. */
export function readLines(typed: readonly TypedLine[]): LabourLine[] | null {
  const filled = typed.filter(({ minutes, money }) => minutes.trim() !== '' || money.trim() !== '');
  const lines = filled.map(({ kind, what, minutes, money }) => {
    const minor = money.trim() === '' ? 0 : readMoney(money);
    const time = minutes.trim() === '' ? 0 : /^\d{1,5}$/.test(minutes.trim()) ? Number(minutes) : NaN;
    if (minor === null || Number.isNaN(time) || time > 10_000 || what.trim() === '') return null;
    return { kind, what: what.trim(), minutes: kind === 'labour' ? time : 0, minor };
  });
  return lines.every((line) => line !== null) ? lines : null;
}
