import { draftsAreOf, dropIntakeDraft } from './draft';
import { fingerprint } from './fingerprint';
import { answered, keyFor } from './unanswered';

const CHANGE = JSON.stringify(['POST', '/tickets', { body: { owner: { name: 'Ole Brand', phone: '555 0101' } } }]);

/** As a browser keeps it: a name is a property of its own, as `Object.keys` sees it. */
class Kept {
  [name: string]: unknown;
  getItem(name: string): string | null {
    return Object.hasOwn(this, name) ? String(this[name]) : null;
  }
  setItem(name: string, text: string): void {
    this[name] = text;
  }
  removeItem(name: string): void {
    delete this[name];
  }
}

const kept = (): string[] => Object.entries(localStorage).map((pair) => pair.join(' '));

beforeEach(() => {
  Object.assign(globalThis, { localStorage: new Kept() });
});

describe('a change whose answer never came', () => {
  it('keeps its key and leaves nothing of a person in the browser', () => {
    const key = keyFor(CHANGE);
    expect(keyFor(CHANGE)).toBe(key);
    expect(keyFor(CHANGE.replace('0101', '0102'))).not.toBe(key);
    expect(kept().join()).not.toMatch(/Ole|555/);
    answered(CHANGE);
    expect(keyFor(CHANGE)).not.toBe(key);
  });

  it('is told from others by a fingerprint, whatever differs', () => {
    const texts = Array.from({ length: 20_000 }, (_, n) => `${CHANGE}${n}`);
    expect(new Set(texts.map(fingerprint)).size).toBe(texts.length);
    expect(fingerprint('')).not.toBe(fingerprint(' '));
  });
});

describe('drafts', () => {
  const draft = () => localStorage.getItem('revright.draft.bulletin');
  beforeEach(() => {
    draftsAreOf(3);
    localStorage.setItem('revright.draft.bulletin', '{"title":"Pins of the new kind"}');
    localStorage.setItem('revright.hotkeys', 'off');
  });

  it('stay for the same person, who signs in again after a sign-in ran out', () => {
    draftsAreOf(3);
    expect(draft()).not.toBeNull();
  });

  it.each([
    ['somebody else signs in', 4],
    ['their person signs out', null],
  ])('go when %s, and nothing else does', (_, person) => {
    draftsAreOf(person);
    expect(draft()).toBeNull();
    expect(localStorage.getItem('revright.hotkeys')).toBe('off');
    expect(kept().join()).not.toContain('Pins');
  });

  it('of the intake, which name an owner, are cleared away: the server keeps them now', () => {
    localStorage.setItem('revright.draft.intake', '{"name":"Ole Brand"}');
    dropIntakeDraft();
    expect(kept().join()).not.toContain('Ole');
    expect(draft()).not.toBeNull();
  });

  it('of a person are not found by the one before, who comes back', () => {
    draftsAreOf(4);
    draftsAreOf(3);
    expect(draft()).toBeNull();
  });
});
