import type { PhotoView, TicketView } from '../../../../../libs/contracts';

/** What a photo is of, in words: a place, a position, or the whole unit. */
export function photoPlace(
  ticket: Pick<TicketView, 'positions' | 'places'>,
  { position, place }: Pick<PhotoView, 'position' | 'place'>,
): string {
  const name = ticket.positions.find(({ code }) => code === position)?.name;
  if (name === undefined) return 'The whole unit';
  const at = ticket.places.find((one) => one.position === position && one.place === place);
  return at ? `${name}, ${at.placeName}` : name;
}
