import type { RecordPlaces } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { PositionRow } from '../ports/index';
import type { WholeUnit } from '../view-unit/index';

export type PlaceInput = RecordPlaces['places'][number];

/** The position a record speaks of, when the record makes sense by itself. */
export function checkPlace({ positions, unit }: WholeUnit, input: PlaceInput): Outcome<PositionRow> {
  const position = positions.get(input.position);
  if (!position) {
    return bad(
      'position',
      `${unit.line?.name ?? 'A unit whose line is not known'} has no position '${input.position}'.`,
    );
  }
  if (input.place > position.places) {
    return bad('place', `${position.name} has ${position.places} place(s), and no place ${input.place}.`);
  }
  const says = saysWhat(input);
  if (input.leftOutWhy !== null && says.part)
    return bad('leftOutWhy', `${position.name}: a part and a reason to leave the place out do not go together.`);
  if (input.condition === 'missing' && says.part)
    return bad('condition', `${position.name}: a missing part has neither number nor marks.`);
  if (says.part || input.leftOutWhy !== null || input.condition === 'missing' || input.condition === 'sheared') {
    return done(position);
  }
  return bad(
    'partText',
    `${position.name}: record the part number or the marks, say that it is missing or sheared, or why the place is left out.`,
  );
}

/** The first place that is named twice, or null. */
export function namedTwice(places: readonly PlaceInput[]): PlaceInput | null {
  const seen = new Set<string>();
  for (const one of places) {
    const key = JSON.stringify([one.position, one.place]);
    if (seen.has(key)) return one;
    seen.add(key);
  }
  return null;
}

function saysWhat({ partText, marks, pickedCandidate }: PlaceInput): { part: boolean } {
  return { part: (partText ?? '') !== '' || marks !== null || pickedCandidate !== null };
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
