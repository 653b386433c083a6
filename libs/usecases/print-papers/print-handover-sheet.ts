import type { TicketView } from '../../contracts';
import { handoverSheet, sayingIn, sheetPhotos, type SheetPictures } from '../../papers';
import type { Actor } from '../actor';
import { done, type Outcome } from '../outcome';
import type { Pictures } from '../ports/photo-store';
import type { Press } from '../ports/press';
import type { Ports } from '../run';
import { viewTicket } from '../view-ticket/index';
import { printSettingsOf } from './print-settings';

/** What printing needs besides: the press, and the time zone in which the day of an instant is counted. */
export interface Printing extends Ports {
  readonly press: Press;
  readonly zone: string;
}

/** A file to be printed. */
export interface PrintedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The handover sheet of a ticket that the person may see, as a PDF, with the photos that were chosen for it. */
export async function printHandoverSheet(
  ports: Printing & { readonly pictures: Pictures },
  actor: Actor,
  ticketId: number,
): Promise<Outcome<PrintedFile>> {
  const ticket = await viewTicket(ports, actor, ticketId);
  if (!ticket.ok) return ticket;
  const settings = await printSettingsOf(ports.store);
  const pictures = await picturesOf(ports, ticket.value);
  const paper = handoverSheet(ticket.value, settings, sayingIn(settings.manner, ports.zone), pictures);
  return done({ name: `handover-${fileName(ticket.value.number)}.pdf`, bytes: await ports.press.print(paper) });
}

/** One after the other: a shop's machine has other work than to hold many pictures at once. */
async function picturesOf(
  { store, pictures }: Pick<Ports, 'store'> & { readonly pictures: Pictures },
  ticket: TicketView,
): Promise<SheetPictures> {
  const made = new Map<string, Awaited<ReturnType<Pictures['forPrint']>>>();
  for (const { name } of sheetPhotos(ticket)) {
    const file = await store.photos.file(name, 'full');
    if (file) made.set(name, await pictures.forPrint(file.data));
  }
  return made;
}

/** Letters, figures and dashes only: the name travels in a header. */
export const fileName = (text: string): string => text.replace(/[^A-Za-z0-9-]+/g, '-');
