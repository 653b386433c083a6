import type { PlaceSide, PlaceView, RecordPlaces, VerdictWord } from '../../../../../libs/contracts';

export type PlaceRecord = RecordPlaces['places'][number];
export type Side = RecordPlaces['side'];

/** The record of one side of a place as it stands, with the change laid over it; sent whole. */
export function placeRecord(place: PlaceView, side: Side, change: Partial<PlaceRecord>): PlaceRecord {
  const now = place[side];
  return {
    position: place.position,
    place: place.place,
    partText: now?.partText ?? null,
    marks: now?.marks ?? null,
    pickedCandidate: (now?.marks && now.part?.key) ?? null,
    toldBy: null,
    condition: now?.condition ?? null,
    fittedOn: now?.fittedOn ?? null,
    leftOutWhy: null,
    ...change,
  };
}

/** What a typed or scanned number changes: it takes the place of marks; an emptied field takes the number away. */
export function typedNumber(text: string): Partial<PlaceRecord> {
  const trimmed = text.trim();
  return trimmed === ''
    ? { partText: null, pickedCandidate: null }
    : { partText: trimmed, marks: null, pickedCandidate: null };
}

/** What is in the field of a side: as it was typed, or else the part's number. */
export function numberOf(side: PlaceSide | null): string {
  return side?.partText ?? side?.part?.number ?? '';
}

const WORST_FIRST: readonly VerdictWord[] = ['wrong', 'outdated', 'disputed', 'undecided', 'allowed', 'right'];

/** The verdict a place stands for: of what was left in it, or else of what was found. */
export function verdictOf(place: PlaceView): VerdictWord | null {
  return place.left?.verdict?.verdict ?? place.found?.verdict?.verdict ?? null;
}

/** The worst verdict of several places; null when none has one. */
export function worstVerdict(places: readonly PlaceView[]): VerdictWord | null {
  const said = new Set(places.map(verdictOf));
  return WORST_FIRST.find((verdict) => said.has(verdict)) ?? null;
}
