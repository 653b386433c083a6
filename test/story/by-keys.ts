import type { Locator, Page } from 'playwright-core';

/** More steps than any page has things to step to. */
const MOST_STEPS = 400;

/** Somebody at a page who has keys and nothing else. */
export class ByKeys {
  constructor(readonly page: Page) {}

  /** Steps on with Tab until the thing has the focus, as often as it takes; by the end of the page its beginning follows. */
  async to(thing: Locator): Promise<void> {
    const wanted = thing.first();
    await wanted.waitFor();
    for (let step = 0; step < MOST_STEPS; step += 1) {
      if (await isAt(wanted)) return;
      await this.page.keyboard.press('Tab');
    }
    throw new Error(`No Tab leads to ${String(thing)}.`);
  }

  /** Goes to one of the shop's pages: `/` leads to the search field, and what stands after it is a few steps on. */
  async goTo(place: Locator): Promise<void> {
    await this.page.keyboard.press('/');
    await this.press(place);
  }

  /** Presses a button or follows a link. */
  async press(thing: Locator): Promise<void> {
    await this.to(thing);
    await this.page.keyboard.press('Enter');
  }

  /** Ticks a box. */
  async tick(thing: Locator): Promise<void> {
    await this.to(thing);
    await this.page.keyboard.press('Space');
  }

  /** Writes into a field what is to stand in it. */
  async write(field: Locator, text: string): Promise<void> {
    await this.to(field);
    await this.page.keyboard.press('ControlOrMeta+a');
    await this.page.keyboard.type(text);
  }

  /** Picks an entry of a list by typing how it reads. */
  async pick(list: Locator, value: string): Promise<void> {
    await this.to(list);
    const words = await list
      .locator('option')
      .evaluateAll((all, wanted) => (all as HTMLOptionElement[]).find((one) => one.value === wanted)?.label, value);
    await this.page.keyboard.type(words ?? '');
    const picked = await list.inputValue();
    if (picked !== value) throw new Error(`Typing ${String(words)} picked '${picked}'.`);
  }

  /** What has the focus, in a few words; `nothing` once it is lost. */
  async at(): Promise<string> {
    return this.page.evaluate(AT);
  }

  /** Waits until something has the focus that the words tell; a lost focus never does. */
  async isAt(words: RegExp): Promise<void> {
    for (let look = 0; look < 50; look += 1) {
      const at = await this.at();
      if (at !== 'nothing' && words.test(at)) return;
      await this.page.waitForTimeout(100);
    }
    throw new Error(`Expected to be at ${String(words)}, and is at: ${await this.at()}`);
  }
}

const AT = `(() => {
  const one = document.activeElement;
  if (one === null || one === document.body) return 'nothing';
  return [one.tagName.toLowerCase(), one.getAttribute('aria-label') ?? one.labels?.[0]?.innerText ?? one.innerText]
    .join(' ').replace(/\\s+/g, ' ').slice(0, 120);
})()`;

const isAt = (thing: Locator): Promise<boolean> => thing.evaluate((one) => one === one.ownerDocument.activeElement);
