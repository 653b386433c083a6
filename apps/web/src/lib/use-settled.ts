import { useEffect, useRef, useState } from 'react';

/** How long nothing more is typed before what stands in the field counts. */
const PAUSE_MS = 700;

/**
 * A field whose value is kept as soon as it is chosen. Chosen by hand it is told at once; by keys only when the field is
 * left or nothing more is typed: on the way to a word or a day, each letter chooses something else.
 */
export function useSettled(kept: string, busy: boolean, onSettle: (text: string) => void) {
  const [typed, setTyped] = useState<{ readonly text: string; readonly told: boolean } | null>(null);
  const [wasBusy, setWasBusy] = useState(busy);
  const byKeys = useRef(false);
  if (wasBusy !== busy) {
    setWasBusy(busy);
    // What was told is on record by now, or was refused.
    if (!busy && typed?.told) setTyped(null);
  }
  const tell = (text: string) => {
    setTyped(text === kept ? null : { text, told: true });
    if (text !== kept) onSettle(text);
  };
  const waiting = typed !== null && !typed.told ? typed.text : null;
  useEffect(() => {
    if (waiting === null) return;
    const timer = window.setTimeout(() => tell(waiting), PAUSE_MS);
    return () => window.clearTimeout(timer);
  });
  return {
    value: typed?.text ?? kept,
    onType: (text: string) => (byKeys.current ? setTyped({ text, told: false }) : tell(text)),
    onKeyDown: () => void (byKeys.current = true),
    onPointerDown: () => void (byKeys.current = false),
    onBlur: () => (waiting === null ? undefined : tell(waiting)),
  };
}
