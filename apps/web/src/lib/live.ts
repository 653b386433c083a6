import type { QueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { useQueryClient } from '@tanstack/react-query';
import { liveEvent } from '../../../../libs/contracts';

/** Which cached answers an event of that kind makes old. A kind that is not known makes everything old. */
const TOUCHES: Record<string, readonly string[]> = {
  ticket: ['board', 'bench-lists', 'ticket', 'search', 'flags', 'shelf'],
  unit: ['board', 'ticket', 'flags'],
  flag: ['board', 'bench-lists', 'ticket', 'flags'],
  bulletin: ['shelf', 'bulletins', 'bulletin', 'look-up', 'flags', 'rulebook'],
  recheck: ['bulletin', 'bulletins', 'callbacks', 'flags', 'board', 'ticket', 'rechecks'],
  callback: ['callbacks'],
  shelf: ['shelf', 'ticket', 'board', 'bulletin'],
  sheet: ['sheet'],
  // the server's own call to look, in case a hint was lost
  look: ['board', 'bench-lists', 'ticket', 'flags', 'bulletin', 'bulletins', 'callbacks', 'shelf'],
};

/** The first words of the query keys that are old after an event of that kind. */
export function touchedBy(kind: string): readonly string[] | null {
  return TOUCHES[kind] ?? null;
}

function takeIn(client: QueryClient, data: string): void {
  const event = liveEvent.safeParse(JSON.parse(data));
  if (!event.success) return;
  const touched = touchedBy(event.data.kind);
  void client.invalidateQueries({ predicate: ({ queryKey }) => !touched || touched.includes(String(queryKey[0])) });
}

/** Keeps the page in step with the other benches; the browser takes the connection up again when it drops. */
export function useLiveUpdates(on: boolean): void {
  const client = useQueryClient();
  useEffect(() => {
    if (!on) return undefined;
    const events = new EventSource('/api/live');
    let wasOpen = false;
    events.onopen = () => {
      if (wasOpen) void client.invalidateQueries();
      wasOpen = true;
    };
    events.onmessage = ({ data }: MessageEvent<string>) => takeIn(client, data);
    return () => events.close();
  }, [client, on]);
}
