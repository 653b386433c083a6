import type { ScanAnswer } from '../../contracts';
import {
  hasRightCheckDigit,
  looksLikeGs1,
  partKeyOf,
  readGs1,
  readPartNumber,
  readUnitTag,
  sayGs1Problem,
  tradeNumbersIn,
  writeTradeNumber,
} from '../../part-number';
import { sightOf, type Actor } from '../actor';
import type { PartRow, Tables } from '../ports/index';
import { partByTradeNumber } from '../read-part-text/part-by-trade-number';
import type { Ports } from '../run';
import { searchTickets } from '../view-board/index';

/**
 * Where a scan leads: the tag of a ticket, the tag of a unit, or a part's bag with its plain number or a GS1 element
 * string. A code that is one of these and leads nowhere says so in a sentence; anything else is text to search for.
 */
export async function readScan(ports: Pick<Ports, 'store'>, actor: Actor, given: string): Promise<ScanAnswer> {
  const { store } = ports;
  const text = given.replace(/[\r\n\t]+$/, '');
  if (looksLikeGs1(text)) return readBag(store, text);
  const tag = readUnitTag(text);
  if (tag)
    return tag.right
      ? unitAt(store, actor, tag.unitId)
      : unknown(`The check digit of ${text.trim()} is wrong: scan it again.`);
  const number = text.trim().toUpperCase();
  const ticket = (await searchTickets(ports, actor, text)).find((hit) => hit.number === number);
  if (ticket) return { kind: 'ticket', id: ticket.id };
  const part = await partOf(store, text);
  if (part) return { kind: 'part', ...part, batch: null };
  const carried = await partByTradeNumber(store, number);
  if (carried) return { kind: 'part', part: refOf(carried.part), pack: carried.pack, batch: null };
  return /^(?:\d{8}|\d{12,14})$/.test(number) ? gtinAlone(number) : { kind: 'text' };
}

const unknown = (sentence: string): ScanAnswer => ({ kind: 'unknown', sentence });

const noneBy = (number: string): string =>
  `No part is known here by the trade number ${number}; scan or type the maker's number on the bag.`;

function gtinAlone(digits: string): ScanAnswer {
  // A serial number can look like it: only one that can be nothing else is refused here.
  return hasRightCheckDigit(digits) && digits.length >= 12 ? unknown(noneBy(digits)) : { kind: 'text' };
}

async function unitAt(store: Tables, actor: Actor, id: number): Promise<ScanAnswer> {
  const sight = sightOf(actor);
  const seen = sight === null ? (await store.units.byId(id)) !== null : await store.units.isAt(id, sight);
  return seen ? { kind: 'unit', id } : unknown('The tag belongs to no unit of this shop.');
}

async function readBag(store: Tables, text: string): Promise<ScanAnswer> {
  const read = readGs1(text);
  if (!read.ok) return unknown(sayGs1Problem(read.problem));
  const batch = read.fields.get('10') ?? null;
  const numbers = ['240', '241'].flatMap((field) => read.fields.get(field) ?? []);
  for (const number of numbers) {
    const part = await partOf(store, number);
    if (part) return { kind: 'part', ...part, batch };
  }
  const carried = await partByTradeNumber(store, text);
  if (carried) return { kind: 'part', part: refOf(carried.part), pack: carried.pack, batch };
  const [first] = numbers;
  if (first !== undefined) return unknown(`The bag names the part ${first}, which is in no catalogue here.`);
  const [trade] = tradeNumbersIn(text);
  if (trade !== undefined) return unknown(noneBy(writeTradeNumber(trade)));
  return unknown("The code names no maker's number; scan or type the number printed on the bag.");
}

/** The listed part a number names as any maker of the catalogue writes it, and how many the bag holds. */
async function partOf({ catalogue }: Tables, text: string) {
  const readings = (await catalogue.makers()).flatMap(({ numberRules }) => {
    const reading = readPartNumber(text, numberRules);
    if (!reading.ok) return [];
    const { canonical, pack } = reading.number;
    return [{ key: partKeyOf(numberRules.makerCode, canonical), pack }];
  });
  const known = await catalogue.partsByKeys(readings.map(({ key }) => key));
  const found = known.find(({ listed }) => listed);
  return found ? { part: refOf(found), pack: readings.find(({ key }) => key === found.key)!.pack } : null;
}

const refOf = ({ key, number, name }: PartRow) => ({ key, number, name });
