import type { PlaceView, TicketView } from '../contracts';

/** One place on the sheet for the owner. */
export interface SheetLine {
  key: string;
  place: string;
  found: string;
  fitted: string;
  why: string;
}

function foundWords({ found }: PlaceView): string {
  if (!found) return 'not looked at';
  if (found.leftOutWhy !== null) return `left out: ${found.leftOutWhy}`;
  const part = found.part?.number ?? found.partText ?? (found.marks ? 'no number readable' : '');
  return [part, found.condition].filter(Boolean).join(', ') || 'nothing';
}

/** What was done, place by place; places that were left alone and right are not on it. */
export function sheetLines({ places, positions }: Pick<TicketView, 'places' | 'positions'>): SheetLine[] {
  const nameOf = (code: string) => positions.find((position) => position.code === code)?.name ?? code;
  return places
    .filter(({ found, left }) => left !== null || (found?.verdict && found.verdict.verdict !== 'right'))
    .map((place) => ({
      key: `${place.position} ${place.place}`,
      place: place.placeName.includes(nameOf(place.position))
        ? place.placeName
        : `${nameOf(place.position)}, ${place.placeName}`,
      found: foundWords(place),
      fitted: place.left?.part?.number ?? place.left?.partText ?? 'as it was',
      why: place.found?.verdict?.ownerSentence ?? place.left?.verdict?.ownerSentence ?? '',
    }));
}

/** The owner's word on being called, as it stands on the sheet. */
export function consentWords(consent: boolean): string {
  return consent
    ? 'You agreed that we call you when a later bulletin changes what is right for this unit.'
    : 'You have not agreed to be called when a later bulletin changes what is right for this unit.';
}
