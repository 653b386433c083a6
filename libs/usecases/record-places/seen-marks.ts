import type { MarksSeenInput } from '../../fastener';
import type { Marks } from '../../contracts';

/**
 * What was seen on a head as the fastener library takes it: `none`, a count of lines such as `3 lines`, or else the
 * letters of a stamp. Nothing written means nobody looked.
 */
export function seenMarks({ headMarks, ...rest }: Marks): MarksSeenInput {
  return { ...rest, headMarks: readHeadMarks(headMarks) };
}

function readHeadMarks(text: string | null): MarksSeenInput['headMarks'] {
  const plain = text?.trim().toLowerCase() ?? '';
  if (plain === '') return null;
  if (plain === 'none' || plain === 'no marks' || plain === 'no mark') return { kind: 'none' };
  const lines = /^(\d{1,2})\s*(?:radial\s*)?(?:lines?|dashes|dash)$/.exec(plain);
  if (lines) return { kind: 'radial-lines', count: Number(lines[1]) };
  return { kind: 'stamp', text: text!.trim() };
}
