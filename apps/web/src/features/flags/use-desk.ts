import { useState } from 'react';
import type { FlagView } from '../../../../../libs/contracts';
import { useHotkeys } from '../../lib/hotkeys';
import type { Decision } from './decide-dialog';

export interface Asked {
  decision: Decision;
  on: readonly FlagView[];
}

/**
 * What is marked, ticked and asked on the desk. One row is always marked; the keys act on what is ticked, or else on
 * the marked row. A flag that is decided leaves the list, and with it its tick.
 */
export function useDesk(order: readonly FlagView[], mayDecide: boolean) {
  const [markedId, mark] = useState<number | null>(null);
  const [tickedIds, setTicked] = useState<ReadonlySet<number>>(new Set());
  const [asked, setAsked] = useState<Asked | null>(null);
  const marked = order.find(({ id }) => id === markedId) ?? order[0] ?? null;
  const ticked = order.filter(({ id }) => tickedIds.has(id));
  const tick = (ids: readonly number[], on: boolean) =>
    setTicked((now) => new Set(on ? [...now, ...ids] : [...now].filter((id) => !ids.includes(id))));
  const decide = (decision: Decision, on: readonly FlagView[]) => {
    if (mayDecide && on.length > 0) setAsked({ decision, on });
  };
  useDeskKeys({ order, marked, ticked, mark, tick, decide });
  const isTicked = (id: number) => tickedIds.has(id);
  return { marked, ticked, isTicked, mark, tick, decide, asked, close: () => setAsked(null) };
}

interface DeskKeys {
  order: readonly FlagView[];
  marked: FlagView | null;
  ticked: readonly FlagView[];
  mark: (id: number) => void;
  tick: (ids: readonly number[], on: boolean) => void;
  decide: (decision: Decision, on: readonly FlagView[]) => void;
}

function useDeskKeys({ order, marked, ticked, mark, tick, decide }: DeskKeys): void {
  const on = ticked.length > 0 ? ticked : marked ? [marked] : [];
  const step = (by: number) => {
    const next = marked ? order[order.indexOf(marked) + by] : order[0];
    if (!next) return;
    mark(next.id);
    document.querySelector<HTMLElement>(`[data-flag="${next.id}"]`)?.focus();
  };
  const acts: Record<string, () => void> = {
    j: () => step(1),
    k: () => step(-1),
    a: () => decide('accept', on),
    s: () => decide('send-back', on),
    c: () => decide('callback', on),
    x: () => (marked ? tick([marked.id], !ticked.includes(marked)) : undefined),
  };
  useHotkeys(acts);
}
