import { useEffect, useRef, useState } from 'react';
import type { FlagView } from '../../../../../libs/contracts';
import { useHotkeys } from '../../lib/hotkeys';
import type { Decision } from './decide-dialog';

export interface Asked {
  decision: Decision;
  on: readonly FlagView[];
}

/**
 * What is marked, ticked and asked on the desk. One row is always marked; the keys act on what is ticked, or else on
 * the marked row. A flag that is decided leaves the list, and with it its tick; the one that moves up is marked then.
 */
export function useDesk(order: readonly FlagView[], mayDecide: boolean) {
  const [{ id: markedId, at }, setMarked] = useState<{ id: number | null; at: number }>({ id: null, at: 0 });
  const mark = (id: number) => setMarked({ id, at: order.findIndex((flag) => flag.id === id) });
  const [tickedIds, setTicked] = useState<ReadonlySet<number>>(new Set());
  const [asked, setAsked] = useState<Asked | null>(null);
  const marked = order.find(({ id }) => id === markedId) ?? order[Math.min(at, order.length - 1)] ?? null;
  useReturn(asked, marked?.id);
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
    goToRow(next.id);
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

const goToRow = (id: number) => document.querySelector<HTMLElement>(`[data-flag="${id}"]`)?.focus();

/** Whoever has decided, or left it, is at the row that is marked by then. */
function useReturn(asked: Asked | null, marked: number | undefined): void {
  const before = useRef(asked);
  useEffect(() => {
    const closed = before.current !== null && asked === null;
    before.current = asked;
    if (closed && marked !== undefined && document.activeElement === document.body) goToRow(marked);
  }, [asked, marked]);
}
