import { draggable, dropTargetForElements } from '@atlaskit/pragmatic-drag-and-drop/element/adapter';
import { useEffect, useRef, useState, type RefObject } from 'react';

/** What is dragged: of which kind, and its id. Dragging is only ever a shortcut for a button. */
type Dragged = Record<string, unknown> & { kind: string; id: number };

/** Makes the element something that can be dragged; `on` false leaves it as it is. */
export function useDrag<E extends HTMLElement>(kind: string, id: number, on: boolean): RefObject<E | null> {
  const ref = useRef<E>(null);
  useEffect(() => {
    if (!ref.current || !on) return undefined;
    return draggable({ element: ref.current, getInitialData: (): Dragged => ({ kind, id }) });
  }, [kind, id, on]);
  return ref;
}

/** Over which half of the element something hangs; null while nothing does. */
export type Over = 'upper' | 'lower' | null;

/**
 * Makes the element a place to drop things of that kind on. `onDrop` is told what fell and on which half; of places
 * that lie in each other only the innermost is told.
 */
export function useDrop<E extends HTMLElement>(
  ref: RefObject<E | null>,
  kind: string,
  onDrop: ((id: number, half: 'upper' | 'lower') => void) | null,
): Over {
  const [over, setOver] = useState<Over>(null);
  const act = useRef(onDrop);
  useEffect(() => {
    act.current = onDrop;
  });
  const on = onDrop !== null;
  useEffect(() => {
    const element = ref.current;
    if (!element || !on) return undefined;
    const half = (y: number) => {
      const { top, height } = element.getBoundingClientRect();
      return y < top + height / 2 ? 'upper' : 'lower';
    };
    return dropTargetForElements({
      element,
      canDrop: ({ source }) => source.data['kind'] === kind,
      onDrag: ({ self, location: { current } }) =>
        setOver(current.dropTargets[0]?.element === self.element ? half(current.input.clientY) : null),
      onDragLeave: () => setOver(null),
      onDrop: ({ self, source, location: { current } }) => {
        setOver(null);
        if (current.dropTargets[0]?.element !== self.element) return;
        act.current?.(Number(source.data['id']), half(current.input.clientY));
      },
    });
  }, [ref, kind, on]);
  return over;
}
