import { useEffect } from 'react';

const SWITCH = 'revright.keys';

/** Single-letter keys can be switched off, for people who speak to their machine. */
export function keysAreOn(): boolean {
  return localStorage.getItem(SWITCH) !== 'off';
}

export function switchKeys(on: boolean): void {
  localStorage.setItem(SWITCH, on ? 'on' : 'off');
}

/** True where a letter belongs to what is being typed. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName))
  );
}

/** Runs the act of the pressed key, unless someone is typing, a dialog is open or the keys are switched off. */
export function useHotkeys(acts: Record<string, () => void>): void {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const act = acts[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey || !keysAreOn()) return;
      if (isTyping(event.target) || document.querySelector('[role="dialog"]')) return;
      event.preventDefault();
      act();
    };
    document.addEventListener('keydown', listen);
    return () => document.removeEventListener('keydown', listen);
  }, [acts]);
}
