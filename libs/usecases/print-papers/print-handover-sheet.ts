import { handoverSheet, sayingIn } from '../../papers';
import type { Actor } from '../actor';
import { done, type Outcome } from '../outcome';
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

/** The handover sheet of a ticket that the person may see, as a PDF. */
export async function printHandoverSheet(
  ports: Printing,
  actor: Actor,
  ticketId: number,
): Promise<Outcome<PrintedFile>> {
  const ticket = await viewTicket(ports, actor, ticketId);
  if (!ticket.ok) return ticket;
  const settings = await printSettingsOf(ports.store);
  const paper = handoverSheet(ticket.value, settings, sayingIn(settings.manner, ports.zone));
  return done({ name: `handover-${fileName(ticket.value.number)}.pdf`, bytes: await ports.press.print(paper) });
}

/** Letters, figures and dashes only: the name travels in a header. */
export const fileName = (text: string): string => text.replace(/[^A-Za-z0-9-]+/g, '-');
