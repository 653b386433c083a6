import type { StrengthView, TorqueUnit } from '../../../../libs/contracts';
import { sayTorque } from '../lib/say';

/** One mark on the torque axis, in N·m; equal ends are one value. */
export interface TorqueMark {
  readonly kind: 'required' | 'fitted' | 'rated';
  readonly label: string;
  readonly low: number;
  readonly high: number;
}

/** What is drawn: only what is known. */
export function torqueMarks({ required, fitted, rated }: StrengthView): TorqueMark[] {
  const marks: TorqueMark[] = [];
  if (required) marks.push({ kind: 'required', label: 'Required part lets go at', ...required });
  if (fitted) marks.push({ kind: 'fitted', label: 'Fitted part lets go at', ...fitted });
  if (rated !== null) marks.push({ kind: 'rated', label: 'Drive line is rated for', low: rated, high: rated });
  return marks;
}

/** The picture for who does not see it. */
export function torqueInWords(marks: readonly TorqueMark[], unit: TorqueUnit): string {
  const said = marks.map((mark) => `${mark.label} ${sayTorque(mark, unit)}.`).join(' ');
  return marks.some(({ kind }) => kind === 'rated') ? said : `${said} The drive line's rating is not known.`;
}
