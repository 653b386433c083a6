import type { PrintSettings, TicketView } from '../contracts';
import { OWNERS_CAUTION } from './cautions';
import type { Block, Line, Paper, Picture } from './paper';
import { consentWords, photoWords, placeOfPhoto, sheetLines, sheetPhotos, warrantyWords } from './sheet-lines';
import type { Saying } from './saying';
import { unitName } from './unit-name';

const number = (text: string): Line => ({ text, number: true });

/** The photos that were chosen for the sheet, by their names, as they are printed. */
export type SheetPictures = ReadonlyMap<string, Omit<Picture, 'words'>>;

/**
 * The sheet that goes to the owner with the unit: found, fitted, why, spares, cautions, and the word on being called. A
 * photo that was chosen for it stands under the place it belongs to.
 */
export function handoverSheet(
  ticket: TicketView,
  settings: PrintSettings,
  say: Saying,
  pictures: SheetPictures = new Map(),
): Paper {
  return {
    title: `Handover sheet ${ticket.number}`,
    size: settings.paper,
    foot: [ticket.number, settings.shopName, settings.phone].filter(Boolean).join(' · '),
    pages: [
      [
        head(ticket, settings, say),
        ...unitBlocks(ticket),
        { kind: 'heading', text: 'What was found and what was fitted' },
        ...foundAndFitted(ticket, pictures),
        { kind: 'heading', text: 'Spares handed to you' },
        spares(ticket),
        ...warranty(ticket, say),
        ...accepted(ticket),
        {
          kind: 'text',
          line: ['Parts and labour: ', { text: say.money(ticket.totalMinor, ticket.currency), strong: true }],
        },
        { kind: 'caution', text: OWNERS_CAUTION },
        { kind: 'text', line: consentWords(ticket.owner.consent) },
        { kind: 'sign', text: 'Received by' },
      ],
    ],
  };
}

function head({ number: ticketNumber, closedAt, owner }: TicketView, settings: PrintSettings, say: Saying): Block {
  const handed = closedAt ? `Handed over ${say.instantDay(closedAt)}` : 'Not handed over yet';
  return {
    kind: 'title',
    left: [{ text: ticketNumber, number: true, strong: true }, handed, settings.shopName, settings.address].filter(
      filled,
    ),
    right: [{ text: owner.name, strong: true }, owner.address, owner.phone].filter(filled),
  };
}

const filled = (line: Line): boolean => line !== '';

function unitBlocks({ unit, complaint }: TicketView): Block[] {
  const name = unitName(unit);
  const serial = unit.serial ?? `not readable (${unit.serialAbsent ?? 'no reason given'})`;
  const line: Line = [
    { text: name, strong: true },
    ', serial ',
    { text: serial, number: unit.serial !== null },
    `. ${unit.buildDates.sentence}`,
  ];
  return [{ kind: 'text', line }, ...(complaint ? [{ kind: 'text' as const, line: `You told us: ${complaint}` }] : [])];
}

function foundAndFitted(ticket: TicketView, pictures: SheetPictures): Block[] {
  const lines = sheetLines(ticket);
  const places = new Set(lines.map(({ key }) => key));
  const beside = (key: string) => printed(ticket, pictures, (photo) => placeOfPhoto(photo) === key);
  const elsewhere = printed(ticket, pictures, (photo) => !places.has(placeOfPhoto(photo)));
  const rows = lines.flatMap(({ key, place, found, fitted, why }) => {
    const here = beside(key);
    return [[place, number(found), number(fitted), why], ...(here.length > 0 ? [{ pictures: here }] : [])];
  });
  const table: Block =
    lines.length === 0
      ? { kind: 'text', line: 'Every place that was looked at holds the right part; nothing was changed.' }
      : { kind: 'table', heads: ['Place', 'Found', 'Fitted', 'Why'], widths: [22, 19, 17, 42], rows };
  return elsewhere.length > 0 ? [table, { kind: 'pictures', pictures: elsewhere }] : [table];
}

function printed(
  ticket: TicketView,
  pictures: SheetPictures,
  wanted: (photo: TicketView['photos'][number]) => boolean,
): Picture[] {
  return sheetPhotos(ticket).flatMap((photo) => {
    const picture = wanted(photo) ? pictures.get(photo.name) : undefined;
    return picture ? [{ ...picture, words: photoWords(ticket, photo) }] : [];
  });
}

function spares({ picks }: TicketView): Block {
  const given = picks.filter(({ purpose, state }) => purpose === 'spare' && state !== 'returned');
  if (given.length === 0) return { kind: 'text', line: 'None.' };
  const items = given.map(({ quantity, part }) => [
    `${quantity} × `,
    { text: part.number, number: true },
    ` ${part.name}`,
  ]);
  return { kind: 'list', items };
}

function warranty(ticket: TicketView, say: Saying): Block[] {
  const words = warrantyWords(ticket);
  if (!words) return [];
  const items = words.touched.map(({ where, part, ticket: { number: fittedOn }, on, barred }): Line => [
    `${where}: `,
    { text: part.number, number: true },
    ` ${part.name}, ${say.day(on)} (${fittedOn})${barred === null ? '' : `. Not for this unit: ${barred}`}`,
  ]);
  const list: Block[] = [
    { kind: 'text', line: 'Fitted while it runs:' },
    { kind: 'list', items },
  ];
  return [
    { kind: 'heading', text: 'Warranty' },
    { kind: 'text', line: words.sentence },
    ...(items.length > 0 ? list : []),
  ];
}

function accepted({ flags }: TicketView): Block[] {
  const kept = flags.filter(({ state }) => state === 'accepted');
  if (kept.length === 0) return [];
  const items = kept.map(({ sentence, decision }) => [sentence, decision?.why].filter(Boolean).join(' '));
  return [
    { kind: 'heading', text: 'Accepted by the manager' },
    { kind: 'list', items },
  ];
}
