import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  rulebookImported,
  sheetView,
  type ImportSheet,
  type LookAtSheet,
  type RulebookImported,
  type SheetView,
} from '../../../../../libs/contracts';
import type { SheetKind } from '../../../../../libs/sheets';
import { request, sendFile } from '../../lib/api-client';

/** A file that was brought; asked for anew while the server works on it. */
export const sheetQuery = (id: number) =>
  queryOptions({
    queryKey: ['sheet', id],
    queryFn: () => request(sheetView, 'GET', `/sheets/${id}`),
    refetchInterval: ({ state }) => (state.data?.doing ? 1_000 : false),
  });

export interface BringFile {
  kind: SheetKind;
  file: File;
  encoding?: string;
}

/** Brings a file to the server; nothing of the shop changes. */
export function useBringSheet() {
  return useMutation<SheetView, Error, BringFile>({
    mutationFn: ({ kind, file, encoding }) => sendFile(sheetView, '/sheets', file, { kind, encoding }),
  });
}

function useKept({ id }: SheetView) {
  const client = useQueryClient();
  return {
    onSuccess: (sheet: SheetView) => client.setQueryData(sheetQuery(id).queryKey, sheet),
    onError: () => client.invalidateQueries({ queryKey: sheetQuery(id).queryKey }),
  };
}

export function useLook(sheet: SheetView) {
  return useMutation<SheetView, Error, LookAtSheet>({
    mutationFn: (body) => request(sheetView, 'POST', `/sheets/${sheet.id}/look`, { body, version: sheet.version }),
    ...useKept(sheet),
  });
}

export function useImport(sheet: SheetView) {
  return useMutation<SheetView, Error, ImportSheet>({
    mutationFn: (body) => request(sheetView, 'POST', `/sheets/${sheet.id}/import`, { body, version: sheet.version }),
    ...useKept(sheet),
  });
}

/** Takes a rulebook file in, or says what it would do. */
export function useBringRulebook() {
  return useMutation<RulebookImported, Error, { file: File; dryRun: boolean }>({
    mutationFn: ({ file, dryRun }) =>
      sendFile(rulebookImported, '/rulebook-file', file, { dryRun: dryRun ? 'true' : 'false' }),
  });
}
