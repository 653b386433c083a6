import type { KeyboardEvent } from 'react';

const FIELDS = 'input, select, textarea, button[type="submit"]';

/**
 * For a form that is filled in by scanner too: a scanner ends every number with Enter, and a form that is sent by it is sent
 * half filled in. Enter in a field for text or a number leads to the next field instead; the button at the end sends.
 */
export function enterMovesOn(event: KeyboardEvent<HTMLFormElement>): void {
  const { key, target, currentTarget: form } = event;
  if (key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type === 'checkbox') return;
  event.preventDefault();
  const fields = [...form.querySelectorAll<HTMLElement>(FIELDS)];
  const after = fields.slice(fields.indexOf(target) + 1);
  after.find((field) => !field.matches(':disabled') && field.checkVisibility())?.focus();
}
