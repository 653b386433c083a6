import { kindOf, writeRow, type SheetKind } from '../../sheets';
import { sightOf, type Actor } from '../actor';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';
import { catalogueRows, type Values } from './catalogue-rows';
import { ownerRows } from './owner-rows';
import { ruleRows } from './rule-rows';
import { ticketRows } from './ticket-rows';

/**
 * Everything of a kind that the person may see, as rows of cells in the order of the kind's columns, piece by piece.
 * Importing them again changes nothing.
 */
export async function* exportSheet(
  { store }: Ports,
  actor: Actor,
  id: SheetKind,
): AsyncGenerator<readonly (readonly string[])[]> {
  const kind = kindOf(id);
  for await (const rows of rowsOf(store, actor, id)) yield rows.map((row) => writeRow(kind, row));
}

function rowsOf(store: Tables, actor: Actor, id: SheetKind): AsyncIterable<readonly Values[]> {
  if (id === 'owners') return ownerRows(store, sightOf(actor));
  if (id === 'tickets') return ticketRows(store, sightOf(actor));
  if (id === 'rules') return ruleRows(store);
  return catalogueRows(store, id);
}
