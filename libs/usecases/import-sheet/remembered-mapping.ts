import type { SheetKind } from '../../sheets';
import type { Tables } from '../ports/index';

/** Under which setting the shop's headings for a kind are remembered. */
export const mappingKey = (kind: SheetKind): string => `sheet-columns/${kind}`;

/** The headings the shop chose last for each field of a kind; null for one that was left out. */
export async function rememberedMapping(
  { settings }: Pick<Tables, 'settings'>,
  kind: SheetKind,
): Promise<Record<string, string | null>> {
  const kept = await settings.read(mappingKey(kind));
  return typeof kept === 'object' && kept !== null ? (kept as Record<string, string | null>) : {};
}
