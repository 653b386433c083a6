import { useMutation, useQueryClient } from '@tanstack/react-query';
import { bulletinRow, type BulletinRow } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';
import type { EditorState } from './editor-state';
import { resolveParts } from './resolve-parts';
import { partsNamed, wireFromTyped } from './typed-rule';

/** Keeps a paper as a draft; a new one when `saved` is null. The server answers with its row. */
export function useSaveBulletin(saved: { id: number; version: number } | null) {
  const client = useQueryClient();
  return useMutation<BulletinRow, Error, EditorState>({
    mutationFn: async ({ head, rules, ends }) => {
      const keyOf = await resolveParts(rules.flatMap(partsNamed));
      const inForceFrom = head.effective ?? head.issued;
      const draft = { opens: rules.map((rule) => wireFromTyped(rule, inForceFrom, keyOf)), ends };
      const body = { ...head, draft };
      return saved
        ? request(bulletinRow, 'PUT', `/bulletins/${saved.id}`, { body, version: saved.version })
        : request(bulletinRow, 'POST', '/bulletins', { body });
    },
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: ['bulletins'] });
      await client.invalidateQueries({ queryKey: ['bulletin'] });
    },
  });
}
