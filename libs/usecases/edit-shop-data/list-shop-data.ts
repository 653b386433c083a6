import type { SerialSchemeRow, StandardEditionRow } from '../../contracts';
import type { EditionRow, SchemeRow } from '../ports/index';
import type { Ports } from '../run';

/** Serial schemes by maker, then by the time they were used. */
export async function listSerialSchemes({ store }: Ports): Promise<SerialSchemeRow[]> {
  return (await store.shopData.schemes()).map(schemeView);
}

/** Editions of standards, newest first within a standard. */
export async function listStandardEditions({ store }: Ports): Promise<StandardEditionRow[]> {
  return (await store.shopData.editions()).map(editionView);
}

export const schemeView = (row: SchemeRow): SerialSchemeRow => ({ ...row, scheme: { ...row.scheme } });
export const editionView = (row: EditionRow): StandardEditionRow => ({ ...row, edition: { ...row.edition } });
