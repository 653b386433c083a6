import type { Calendar } from '../calendar';
import { boughfall } from './boughfall';
import { driftbreak } from './driftbreak';
import { fallowsweep } from './fallowsweep';
import type { LineRoom } from './line-room';
import { loamer } from './loamer';
import { sedgeline } from './sedgeline';
import { sodturn } from './sodturn';
import { stavewright } from './stavewright';
import { twigmaw } from './twigmaw';

/** The eight product lines of the demo, each in a file of its own. */
export function allLines(calendar: Calendar): readonly LineRoom[] {
  return [driftbreak, loamer, stavewright, twigmaw, sedgeline, sodturn, boughfall, fallowsweep].map((line) =>
    line(calendar),
  );
}
