import { complementOf, daySet, formatDay, meetOfSpans, spanHolds, unionOf, type DaySpan } from '../../libs/day';
import {
  createJudge,
  readRulebook,
  usualStanding,
  writeRulebook,
  type FitRule,
  type Rulebook,
} from '../../libs/fit-rules';
import { withDatabase } from '../../libs/testing';

/*
 * Periods of SQL:2011 include their start and exclude their end. The range types of PostgreSQL are the outside witness:
 * what the libraries say of spans must be what the database says of the same spans.
 */

const POINTS = [-Infinity, 17_000, 17_001, 17_002, 17_005, Infinity];

function allSpans(): DaySpan[] {
  return POINTS.flatMap((from) => POINTS.filter((to) => from < to).map((to) => ({ from, to })));
}

/** The span as PostgreSQL writes a daterange. */
function text({ from, to }: DaySpan): string {
  return `[${from === -Infinity ? '' : formatDay(from)},${to === Infinity ? '' : formatDay(to)})`;
}

function canonical(span: DaySpan | null): string {
  if (span === null) return 'empty';
  const written = text(span);
  return written.startsWith('[,') ? `(${written.slice(1)}` : written;
}

function multirange(spans: readonly DaySpan[]): string {
  return `{${spans.map(canonical).join(',')}}`;
}

describe('spans of days against the range types of PostgreSQL', () => {
  const database = withDatabase({ empty: true });

  async function column<T>(sql: string, values: readonly unknown[]): Promise<T[]> {
    const { rows } = await database.pool.query<{ answer: T }>(sql, [...values]);
    return rows.map(({ answer }) => answer);
  }

  const pairs = allSpans().flatMap((a) => allSpans().map((b) => ({ a, b })));
  const left = pairs.map(({ a }) => text(a));
  const right = pairs.map(({ b }) => text(b));
  const FROM = 'FROM unnest($1::daterange[], $2::daterange[]) WITH ORDINALITY AS pair(a, b, n) ORDER BY n';

  it('overlap in the same pairs, and share the same days', async () => {
    const shared = await column<string>(`SELECT (a * b)::text AS answer ${FROM}`, [left, right]);
    expect(pairs.map(({ a, b }) => canonical(meetOfSpans(a, b)))).toEqual(shared);
    const overlap = await column<boolean>(`SELECT a && b AS answer ${FROM}`, [left, right]);
    expect(pairs.map(({ a, b }) => meetOfSpans(a, b) !== null)).toEqual(overlap);
  });

  it('have the same union and leave the same days out', async () => {
    const union = await column<string>(`SELECT (a::datemultirange + b::datemultirange)::text AS answer ${FROM}`, [
      left,
      right,
    ]);
    expect(pairs.map(({ a, b }) => multirange(unionOf([a], [b])))).toEqual(union);
    const rest = await column<string>(`SELECT (a::datemultirange - b::datemultirange)::text AS answer ${FROM}`, [
      left,
      right,
    ]);
    expect(pairs.map(({ a, b }) => multirange(complementOf(daySet([b]), a)))).toEqual(rest);
  });

  it('hold the same days: the first one yes, the end no', async () => {
    const days = [16_999, 17_000, 17_001, 17_002, 17_004, 17_005, 17_006];
    const asked = allSpans().flatMap((span) => days.map((day) => ({ span, day })));
    const sql =
      'SELECT a @> d AS answer FROM unnest($1::daterange[], $2::date[]) WITH ORDINALITY AS asked(a, d, n) ORDER BY n';
    const answers = await column<boolean>(sql, [
      asked.map(({ span }) => text(span)),
      asked.map(({ day }) => formatDay(day)),
    ]);
    expect(asked.map(({ span, day }) => spanHolds(span, day))).toEqual(answers);
  });

  it('a rule speaks exactly where the database finds its three spans to hold build day, day in force and instant', async () => {
    const book = manyRules();
    const judge = createJudge(book, { today: 0, now: 0 });
    await database.pool.query('CREATE TABLE rule (key text, built daterange, in_force daterange, known tstzrange)');
    await database.pool.query(
      'INSERT INTO rule SELECT * FROM unnest($1::text[], $2::daterange[], $3::daterange[], $4::tstzrange[])',
      [
        book.rules.map(({ key }) => key),
        book.rules.map(({ built }) => text(built)),
        book.rules.map(({ inForce }) => text(inForce)),
        book.rules.map(({ known }) => `[${instant(known.from)},${instant(known.to)})`),
      ],
    );
    const sql =
      'SELECT key AS answer FROM rule WHERE built @> $1::date AND in_force @> $2::date AND known @> $3::timestamptz ORDER BY key';
    for (const built of [16_999, 17_000, 17_002, 17_005]) {
      for (const inForceOn of [17_000, 17_001, 17_005]) {
        for (const knownAt of [999, 1_000, 1_999, 2_000]) {
          const expected = await column<string>(sql, [
            formatDay(built),
            formatDay(inForceOn),
            new Date(knownAt).toISOString(),
          ]);
          const unit = {
            line: 'talus',
            model: null,
            options: {},
            serial: null,
            built: [{ from: built, to: built + 1 }],
          };
          const [ground] = judge.ruling(unit, 'pin', { inForceOn, knownAt }).pieces[0]!.grounds;
          const spoke = [...ground!.deciding, ...ground!.overridden.map(({ rule }) => rule)].map(({ key }) => key);
          expect(spoke.sort()).toEqual(expected);
        }
      }
    }
  });

  /*
   * The example of IBM's documentation of application-period temporal tables ("Inserting data into an
   * application-period temporal table"): one key, periods that touch are taken, one that overlaps is refused.
   */
  it('versions of one rule whose known spans touch are taken, overlapping ones refused, here as there', async () => {
    await database.pool.query(
      'CREATE TABLE version (key int4range, known daterange, EXCLUDE USING gist (key WITH =, known WITH &&))',
    );
    const spans = [
      ['2008-01-01', '2008-07-01'],
      ['2008-07-01', '2009-01-01'],
      ['2008-06-01', '2008-08-01'],
    ] as const;
    const taken: boolean[] = [];
    for (const [from, to] of spans) {
      const insert = `INSERT INTO version VALUES ('[1,1]', daterange($1, $2))`;
      taken.push(
        await database.pool.query(insert, [from, to]).then(
          () => true,
          (error: { code?: string }) => error.code !== '23P01',
        ),
      );
    }
    expect(taken).toEqual([true, true, false]);
    const versions = spans.map(([from, to], i) => ({
      version: i + 1,
      known: { from: Date.parse(from), to: Date.parse(to) },
    }));
    const [one] = manyRules().rules;
    const fileOf = (count: number) => {
      const rules = versions.slice(0, count).map((version) => ({ ...one!, ...version }));
      return writeRulebook({ ...manyRules(), rules });
    };
    expect(readRulebook(fileOf(2)).ok).toBe(true);
    expect(readRulebook(fileOf(3)).ok).toBe(false);
  });
});

function instant(value: number): string {
  return Number.isFinite(value) ? new Date(value).toISOString() : '';
}

/** Rules with every combination of a few spans, so that every kind of end is met on every clock. */
function manyRules(): Rulebook {
  const built = allSpans();
  const inForce = [allSpans()[0]!, { from: 17_001, to: Infinity }, { from: -Infinity, to: 17_005 }];
  const known = [
    { from: -Infinity, to: Infinity },
    { from: 1_000, to: 2_000 },
    { from: 2_000, to: Infinity },
  ];
  const spans = built.flatMap((a) => inForce.flatMap((b) => known.map((c) => ({ built: a, inForce: b, known: c }))));
  const rules = spans.map((three, i): FitRule => ({
    key: `rule ${String(i).padStart(3, '0')}`,
    version: 1,
    line: 'talus',
    models: [],
    options: [],
    positions: ['pin'],
    serials: null,
    ...three,
    source: 'list',
    required: `HOLM/${i}`,
    allowed: [],
    barred: [],
    action: 'nothing',
    replaces: [],
  }));
  const about = { publisher: 'Holm', number: '1', title: 'list', issued: 0, effective: null, received: 0 };
  const sources = [{ key: 'list', kind: 'parts-list' as const, ...about }];
  return { rules, sources, supersessions: [], standing: usualStanding };
}
