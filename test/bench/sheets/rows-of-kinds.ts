import type { SheetKind } from '../../../libs/sheets';

/** What every kind stands on: a maker, 200 lines of 12 positions and one serial scheme. */
export const HOUSE = `
  INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop');
  INSERT INTO person (id, login, name, role, location_id) VALUES (1, 'manager', 'The manager', 'manager', 1);
  INSERT INTO maker (id, code, name, number_rules) VALUES (1, 'HOLM', 'Holmgard',
    '{"makerCode":"HOLM","noise":"-","packMarks":[],"trailingLetterIsRevision":true}');
  INSERT INTO product_line (id, code, maker_id, name, kind, produced_from)
    SELECT n, 'SNOW-' || n, 1, 'Snow ' || n, 'snow thrower', '2010-01-01' FROM generate_series(0, 199) n;
  INSERT INTO position (line_id, code, name, assembly, places, place_names, sort_order)
    SELECT l, 'PIN-' || p, 'Pin ' || p, 'Auger', 2, '{left,right}', p
    FROM generate_series(0, 199) l, generate_series(0, 11) p;
  INSERT INTO serial_scheme (maker_id, code, scheme) VALUES (1, 'HOLM-A', '{"id":"HOLM-A","maker":"HOLM","lines":[],
    "name":"dated","validFrom":null,"validTo":null,"source":"made for the bench","fields":[{"kind":"year-two-digits"},
    {"kind":"month-number"},{"kind":"sequence","length":7}]}');
  SELECT setval('maker_id_seq', 1), setval('product_line_id_seq', 200);`;

/** Rules on one paper. */
const PAPER = 100;

const number = (n: number) => String(n).padStart(7, '0');
const serial = (n: number) => `${12 + (n % 12)}${String(1 + (n % 11)).padStart(2, '0')}${number(n)}`;
const line = (n: number) => `SNOW-${n % 200}`;
const part = (n: number) => `70-${number(n)}`;
const day = (n: number) => new Date(Date.UTC(2012, 0, 1 + n)).toISOString().slice(0, 10);

/** Row `n` of each kind, by field; every one adds something. */
export const ROWS: Readonly<Record<SheetKind, (n: number) => Readonly<Record<string, string>>>> = {
  makers: (n) => ({ code: `M${n}`, name: `Maker ${n}`, noise: '-' }),
  lines: (n) => ({
    ...{ code: `WAY-${n}`, maker: 'HOLM', name: `Way ${n}`, sort: 'tiller', from: '2012-01-01' },
    models: `W${n} = One; W${n}W = Wide`,
  }),
  positions: (n) => ({
    ...{ line: line(n), code: `BELT-${Math.floor(n / 200)}`, name: `Belt ${n}`, assembly: 'Drive' },
    places: 'left; right',
  }),
  parts: (n) => ({
    maker: 'HOLM',
    number: part(n),
    name: `Part ${n}`,
    price: '12.50',
    diameter: '8',
    grade: 'ISO 898-1 8.8',
  }),
  supersessions: (n) => ({ maker: 'HOLM', number: part(n), by: `71-${number(n)}`, how: 'one-way' }),
  schemes: (n) => ({
    maker: 'HOLM',
    name: `Way ${n}`,
    lines: line(n),
    fields: 'year-two-digits; month-number; sequence 4',
  }),
  rules: (n) => ({
    ...{ paper: `SB-${Math.floor(n / PAPER)}`, publisher: 'Holmgard', title: 'Pins', issued: '2026-03-01' },
    ...{ key: `R-${n}`, line: line(n), positions: `PIN-${Math.floor(n / 200) % 12}` },
    ...{ builtFrom: day(Math.floor(n / 2_400) * 10), builtUntil: day(Math.floor(n / 2_400) * 10 + 10) },
    ...{ required: part(n % 5_000), action: 'nothing' },
  }),
  owners: (n) => ({
    ...{ name: `Owner ${n >> 1}`, phone: `0555 ${number(n >> 1)}`, address: `${n >> 1} Mill Lane`, consent: 'yes' },
    ...{ line: line(n), serial: serial(n), firstSeen: '2025-03-01' },
  }),
  tickets: (n) => ({
    ...{
      number: `OLD-${n >> 1}`,
      opened: '2026-05-02',
      closed: '2026-05-04',
      line: line(n >> 1),
      serial: serial(n >> 1),
    },
    ...{ position: 'PIN-0', place: String(1 + (n & 1)), part: part(n), side: 'left' },
  }),
};
