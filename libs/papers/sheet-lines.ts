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

const placeKey = (position: string, place: number): string => `${position} ${place}`;

/** A place with its position, which is left out where the place is named after it. */
export function placeWords(
  positions: TicketView['positions'],
  { position: code, placeName }: Pick<PlaceView, 'position' | 'placeName'>,
): string {
  const name = positions.find((position) => position.code === code)?.name ?? code;
  return placeName.includes(name) ? placeName : `${name}, ${placeName}`;
}

type SheetPhoto = TicketView['photos'][number];

/** The photos that were chosen for the owner. */
export function sheetPhotos({ photos }: Pick<TicketView, 'photos'>): SheetPhoto[] {
  return photos.filter(({ onSheet }) => onSheet);
}

/** The key of the {@link SheetLine} that a photo stands beside: of a position without a place, its first. */
export function placeOfPhoto({ position, place }: SheetPhoto): string {
  return position === null ? '' : placeKey(position, place ?? 1);
}

/** What stands under a photo: the place it shows, when it was taken, and what was written beside it. */
export function photoWords({ places, positions }: Pick<TicketView, 'places' | 'positions'>, photo: SheetPhoto): string {
  const { position, place, stage, caption } = photo;
  const at = places.find((one) => one.position === position && one.place === place);
  const named = at ? placeWords(positions, at) : positions.find(({ code }) => code === position)?.name;
  return `${named ?? 'The unit'}, at ${stage}${caption === '' ? '' : `: ${caption}`}`;
}

/** What was done, place by place; places that were left alone and right are not on it. */
export function sheetLines({ places, positions }: Pick<TicketView, 'places' | 'positions'>): SheetLine[] {
  return places
    .filter(({ found, left }) => left !== null || (found?.verdict && found.verdict.verdict !== 'right'))
    .map((place) => ({
      key: placeKey(place.position, place.place),
      place: placeWords(positions, place),
      found: foundWords(place),
      fitted: place.left?.part?.number ?? place.left?.partText ?? 'as it was',
      why: place.found?.verdict?.ownerSentence ?? place.left?.verdict?.ownerSentence ?? '',
    }));
}

/** What the sheet says of the warranty: until when it runs, and what was fitted while it did; null where nobody knows. */
export function warrantyWords({
  unit: { warranty },
  touched,
}: Pick<TicketView, 'unit' | 'touched'>): { sentence: string; touched: TicketView['touched'] } | null {
  if (!warranty) return null;
  const within = touched.filter(({ on }) => on >= warranty.boughtOn && on <= warranty.lastDay);
  return { sentence: warranty.sentence, touched: within };
}

/** The owner's word on being called, as it stands on the sheet. */
export function consentWords(consent: boolean): string {
  return consent
    ? 'You agreed that we call you when a later bulletin changes what is right for this unit.'
    : 'You have not agreed to be called when a later bulletin changes what is right for this unit.';
}
