import { assert, property, string } from 'fast-check';
import { parse } from 'papaparse';
import { MANNERS } from '../contracts';
import { csv, escapeHtml, LABEL_LAYOUTS, oneLine, placeOfLabel, sayingIn } from './index';

describe('a day', () => {
  it.each(MANNERS)('in the manner of %s has its month in letters and its year whole', (manner) => {
    for (const day of ['2017-03-04', '2017-09-11', '2017-12-01']) {
      const said = sayingIn(manner, 'UTC').day(day);
      expect(said).toMatch(/\p{L}{3}/u);
      expect(said).toContain('2017');
      expect(said).not.toMatch(/\d[./-]\d/);
    }
  });

  it('of an instant is counted in the zone', () => {
    const late = '2026-11-20T23:30:00Z';
    expect(sayingIn('en-GB', 'UTC').instantDay(late)).toBe('20 Nov 2026');
    expect(sayingIn('en-US', 'Europe/Paris').instantDay(late)).toBe('Nov 21, 2026');
  });
});

describe('values in mails and tables', () => {
  it('are shown as they are by what reads HTML, and begin no element', () => {
    expect(escapeHtml(`<img src=x onerror="a('&')">`)).toBe('&lt;img src=x onerror=&quot;a(&#39;&amp;&#39;)&quot;&gt;');
  });

  it('stay on one line', () => {
    expect(oneLine('Pin\r\nBcc: all@mail.example\u2028x')).toBe('Pin Bcc: all@mail.example x');
    assert(property(string({ unit: 'binary' }), (text) => !/[\p{Cc}\u2028\u2029]/u.test(oneLine(text))));
  });

  it('come back from CSV as they were, or with an apostrophe where a spreadsheet would run them', () => {
    assert(
      property(string(), string(), (a, b) => {
        const [row] = parse<string[]>(csv([[a, b, 'end']]).slice(1)).data;
        [a, b].forEach((value, at) => expect([value, `'${value}`]).toContain(row![at]));
        for (const cell of row!) expect(cell).not.toMatch(/^\s*[=+\-@]/);
      }),
    );
  });
});

describe.each(Object.entries(LABEL_LAYOUTS))('the labels of %s', (_, layout) => {
  it('lie on the sheet, and none over another', () => {
    const [width, height] = layout.size === 'A4' ? [210, 297] : [215.9, 279.4];
    const many = layout.across * layout.down;
    const places = Array.from({ length: many }, (__, n) => placeOfLabel(layout, n));
    for (const { x, y } of places) {
      expect(x + layout.width).toBeLessThanOrEqual(width + 0.01);
      expect(y + layout.height).toBeLessThanOrEqual(height + 0.01);
    }
    expect(layout.stepX).toBeGreaterThanOrEqual(layout.width);
    expect(layout.stepY).toBeGreaterThanOrEqual(layout.height - 0.01);
    expect(placeOfLabel(layout, many)).toMatchObject({ sheet: 1, x: places[0]!.x, y: places[0]!.y });
  });
});
