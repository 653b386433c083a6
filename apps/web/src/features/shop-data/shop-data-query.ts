import { useMutation, useQueryClient } from '@tanstack/react-query';
import {
  savedSerialScheme,
  savedStandardEdition,
  type SavedSerialScheme,
  type SavedStandardEdition,
} from '../../../../../libs/contracts';
import type { SerialScheme, StandardEdition } from '../../../../../libs/build-date';
import { request } from '../../lib/api-client';

/** The row that is changed and the version it was seen at; null for a new one. */
export type OnRow = { id: number; version: number } | null;

/** Keeps a serial scheme; the units it can touch are dated and judged again by the server. */
export function useSaveScheme(on: OnRow) {
  const client = useQueryClient();
  return useMutation<SavedSerialScheme, Error, Omit<SerialScheme, 'id'>>({
    mutationFn: (scheme) =>
      on
        ? request(savedSerialScheme, 'PUT', `/serial-schemes/${on.id}`, { body: { scheme }, version: on.version })
        : request(savedSerialScheme, 'POST', '/serial-schemes', { body: { scheme } }),
    onSettled: () => client.invalidateQueries({ queryKey: ['shop-data'] }),
  });
}

/** Keeps an edition of a standard; units whose plate names a standard are dated and judged again. */
export function useSaveEdition(on: OnRow) {
  const client = useQueryClient();
  return useMutation<SavedStandardEdition, Error, StandardEdition>({
    mutationFn: (edition) =>
      on
        ? request(savedStandardEdition, 'PUT', `/standard-editions/${on.id}`, {
            body: { edition },
            version: on.version,
          })
        : request(savedStandardEdition, 'POST', '/standard-editions', { body: { edition } }),
    onSettled: () => client.invalidateQueries({ queryKey: ['shop-data'] }),
  });
}
