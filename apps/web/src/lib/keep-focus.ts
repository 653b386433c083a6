/** What had the focus, and everything around it, from inside out. */
type Trail = readonly HTMLElement[];

/** What a person can be put down at when the thing they were at has gone: the nearest of these around it. */
const HOLDERS = 'dialog, [role="dialog"], form, li, tr, details, section, main, [tabindex]';

/** Long enough for a dialog to hand the focus back by itself. */
const PATIENCE_MS = 40;

/**
 * Keeps whoever works by keys or by ear where they are. A browser drops the focus when what has it is taken off the page
 * or is switched off, and the next key then begins somewhere else or nowhere. Here the same thing gets it back when it
 * can be pressed again, else the nearest thing around it that is still there; after a dialog, what had the focus before
 * it. A focus that was given away, by pressing on the paper beside things or by a field that lets go, is left alone.
 *
 * Returns how to stop.
 */
export function keepFocus(): () => void {
  let here: Trail = [];
  let beforeDialog: Trail = [];
  let timer = 0;

  const noteFocus = (event: FocusEvent) => {
    const now = trailOf(event.target);
    if (inDialog(now) && !inDialog(here)) beforeDialog = here;
    here = now;
  };
  const forget = () => (here = []);
  // Asked a turn later: by then what was taken off the page or switched off shows it, and all else has let go.
  const noteLeaving = ({ target, relatedTarget }: FocusEvent) => {
    if (relatedTarget !== null || !(target instanceof HTMLElement)) return;
    window.setTimeout(() => {
      const letGo = target.isConnected && target.checkVisibility() && !target.matches(':disabled');
      if (letGo && here[0] === target && document.hasFocus() && document.activeElement === document.body) forget();
    });
  };
  const restore = () => {
    if (document.activeElement !== document.body || here[0] === undefined || isBusy(here[0])) return;
    const place = holderIn(here) ?? (inDialog(here) ? holderIn(beforeDialog) : undefined);
    if (!place) return;
    if (place.tabIndex < 0 && !place.hasAttribute('tabindex')) place.tabIndex = -1;
    place.focus({ preventScroll: true });
  };
  const look = () => {
    window.clearTimeout(timer);
    timer = window.setTimeout(restore, PATIENCE_MS);
  };
  const watch = new MutationObserver(look);

  document.addEventListener('focusin', noteFocus);
  document.addEventListener('focusout', noteLeaving);
  document.addEventListener('pointerdown', forget, true);
  watch.observe(document.body, { childList: true, subtree: true, attributeFilter: ['disabled'] });
  return () => {
    window.clearTimeout(timer);
    watch.disconnect();
    document.removeEventListener('focusin', noteFocus);
    document.removeEventListener('focusout', noteLeaving);
    document.removeEventListener('pointerdown', forget, true);
  };
}

function trailOf(target: EventTarget | null): Trail {
  const trail: HTMLElement[] = [];
  for (let at = target instanceof HTMLElement ? target : null; at && at !== document.body; at = at.parentElement) {
    trail.push(at);
  }
  return trail;
}

const inDialog = (trail: Trail): boolean => trail.some((one) => one.matches('dialog, [role="dialog"]'));

/** Switched off only until an answer has come. */
const isBusy = (one: HTMLElement): boolean => one.isConnected && one.hasAttribute('data-loading');

/** The first of a trail that is on the page and can take the focus: the thing itself, or what holds it. */
function holderIn(trail: Trail): HTMLElement | undefined {
  return trail.find(
    (one, index) =>
      one.isConnected && one.checkVisibility() && !one.matches(':disabled') && (index === 0 || one.matches(HOLDERS)),
  );
}
