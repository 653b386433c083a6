import type { Locator, Page } from 'playwright-core';

/** More stops than any screen has. */
const MOST_STOPS = 400;

/** Two hands on a keyboard: whatever is done goes through `page.keyboard`, and what has the focus can be seen. */
export class Hands {
  constructor(readonly page: Page) {}

  press(key: string): Promise<void> {
    return this.page.keyboard.press(key);
  }

  type(text: string): Promise<void> {
    return this.page.keyboard.type(text);
  }

  /** Goes on by Tab, or back by Shift and Tab, until the target has the focus; it must be seen to have it. */
  async walkTo(target: Locator, way: 'on' | 'back' = 'on'): Promise<void> {
    await target.waitFor();
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      if (await this.has(target)) return this.isAt(target);
      await this.press(way === 'on' ? 'Tab' : 'Shift+Tab');
    }
    throw new Error(`No key leads to ${String(target)}.`);
  }

  /** Writes into a field, over what stands in it. */
  async fill(field: Locator, text: string): Promise<void> {
    await this.walkTo(field);
    await this.press('Control+A');
    await this.type(text);
    expect(await field.inputValue()).toBe(text);
  }

  /** A day, part by part as the device asks for them. */
  async fillDay(field: Locator, figures: string): Promise<void> {
    await this.walkTo(field);
    await this.type(figures);
    expect(await field.inputValue()).toMatch(/^\d{4}-\d\d-\d\d$/);
  }

  /** Picks from a list by typing how the entry begins. */
  async choose(list: Locator, words: string): Promise<void> {
    await this.walkTo(list);
    await this.type(words);
    expect(await list.locator('option:checked').innerText()).toMatch(new RegExp(`^${words}`));
  }

  /** Single letters are what is typed while one is in a field. */
  async leaveField(): Promise<void> {
    while (await this.page.evaluate(`/^(INPUT|SELECT|TEXTAREA)$/.test(document.activeElement.tagName)`))
      await this.press('Tab');
  }

  /** The target has the focus, lies in sight, and looks otherwise than without it: WCAG 2.2, 2.4.7 and 2.4.11. */
  async isAt(target: Locator): Promise<void> {
    for (let tries = 0; tries < 100 && !(await this.has(target)); tries += 1) await this.page.waitForTimeout(20);
    expect(await target.evaluate(describeFocus)).toEqual({ focused: true, marked: true, inSight: true });
  }

  private has(target: Locator): Promise<boolean> {
    return target.evaluate((element) => element === element.ownerDocument.activeElement);
  }
}

/** Runs in the page. The page's own beginning, where one arrives, is no control and carries no mark. */
function describeFocus(element: Element) {
  const { outlineStyle, outlineWidth } = getComputedStyle(element);
  const box = element.getBoundingClientRect();
  const x = Math.min(Math.max(box.left + box.width / 2, 0), innerWidth - 1);
  const y = box.top + Math.min(box.height, 40) / 2;
  const top = document.elementFromPoint(x, y);
  return {
    focused: element === document.activeElement,
    marked: element.tagName === 'MAIN' || (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2),
    inSight: element.tagName === 'MAIN' || (top !== null && (element.contains(top) || top.contains(element))),
  };
}
