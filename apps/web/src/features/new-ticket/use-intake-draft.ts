import { queryOptions } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState, type Dispatch, type SetStateAction } from 'react';
import { ownIntakeDraft, type IntakeDraft } from '../../../../../libs/contracts';
import { request, send, sendLeaving } from '../../lib/api-client';
import { EMPTY_INTAKE } from './intake-draft';

/** What the person at the page has begun to type here, as the server keeps it. */
export const intakeDraftQuery = queryOptions({
  queryKey: ['intake-draft'],
  // Read once for each visit: what is typed from then on is newer than what the server has.
  staleTime: Infinity,
  gcTime: 0,
  retry: false,
  queryFn: () => request(ownIntakeDraft, 'GET', '/session/draft'),
});

/** Nobody types on without a pause for longer than it takes to notice a reload. */
const PAUSE_MS = 400;

/**
 * As useState, begun with what the server kept. What is typed goes there at each pause, and at once when the page is left,
 * so that a reload loses nothing and nothing about an owner lies in the browser. The third forgets it here and there.
 */
export function useIntakeDraft(
  begun: IntakeDraft | null,
): [IntakeDraft, Dispatch<SetStateAction<IntakeDraft>>, () => void] {
  const [draft, setDraft] = useState(begun ?? EMPTY_INTAKE);
  const unkept = useRef<IntakeDraft | null>(null);
  const kept = useRef(draft);
  useEffect(() => {
    if (draft === kept.current) return;
    [unkept.current, kept.current] = [draft, draft];
    const timer = setTimeout(() => {
      unkept.current = null;
      // Without a connection it stays on the page and goes with the next pause.
      send('PUT', '/session/draft', { body: { draft } }).catch(() => undefined);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [draft]);
  useEffect(() => {
    const leave = () => {
      if (unkept.current) sendLeaving('PUT', '/session/draft', { body: { draft: unkept.current } });
      unkept.current = null;
    };
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  const forget = useCallback(() => {
    [unkept.current, kept.current] = [null, EMPTY_INTAKE];
    setDraft(EMPTY_INTAKE);
    send('PUT', '/session/draft', { body: { draft: null } }).catch(() => undefined);
  }, []);
  return [draft, setDraft, forget];
}
