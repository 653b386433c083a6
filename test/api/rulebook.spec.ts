import type {
  BulletinDetail,
  FindingList,
  PlaceExplanation,
  Problem,
  Published,
  RuleList,
  RulebookOverview,
  TicketView,
  WallChartView,
  WhatIf,
} from '../../libs/contracts';
import { replay, sayVerdict, verdictRecord, type FitRuleFile } from '../../libs/fit-rules';
import { withDatabase } from '../../libs/testing';
import { ApiShop, rule, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let manager: Caller;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  manager = await shop.as('manager');
}, 300_000);

/** Saves a bulletin that opens these rules; answers it as a draft. */
async function draft(number: string, opens: FitRuleFile[], issued = '2026-10-01'): Promise<BulletinDetail> {
  const saved = await manager.ask<BulletinDetail>('POST', '/bulletins', {
    ...{ kind: 'service-bulletin', publisher: 'Holmgard', number, title: `Bulletin ${number}` },
    ...{ issued, received: '2026-10-20', draft: { opens, ends: [] } },
  });
  expect(saved.status).toBe(201);
  return saved.body;
}

async function whatIf(bulletin: BulletinDetail): Promise<WhatIf> {
  return (await manager.ask<WhatIf>('POST', `/bulletins/${bulletin.id}/what-if`)).body;
}

const chart = async (query = '') =>
  (await manager.get<WallChartView>(`/rulebook/wall-chart/SNOW-2${query}`)).body.rows.map(
    ({ positionName, when, spans }) =>
      `${positionName}${when}: ${spans.map((one) => `${one.from} ${one.required?.number ?? one.outcome}`).join(', ')}`,
  );

describe('the rulebook before anything is added to it', () => {
  it('lists its papers with their standing, and its rules as sentences in names and printed numbers', async () => {
    const overview = (await manager.get<RulebookOverview>('/rulebook')).body;
    expect(overview.sources).toMatchObject([{ number: 'PL-7', state: 'published', standing: 30, ruleCount: 3 }]);
    expect(overview.lines).toEqual([{ code: 'SNOW-2', name: 'Snow thrower 2', maker: 'Holmgard', ruleCount: 3 }]);
    const { rules, total } = (await manager.get<RuleList>('/rulebook/rules?line=SNOW-2&q=70412a')).body;
    expect(total).toBe(1);
    expect(rules[0]).toMatchObject({
      key: 'PIN-EARLY',
      paper: 'parts list PL-7 of 1 Jan 2010',
      speaks: 'in-force',
      sentence: 'Snow thrower 2, Auger pin, built until 31 Dec 2015: 70-412A is required; 70-499 must not be fitted.',
    });
  });

  it('draws what belongs where over the whole production', async () => {
    expect(await chart()).toEqual(['Auger pin: 2012-01-01 70-412A, 2016-01-01 70-412B', 'Belt: 2012-01-01 80-001']);
  });

  it('is found sound by the audit', async () => {
    const { findings, counts } = (await manager.get<FindingList>('/rulebook/findings')).body;
    expect(findings).toEqual([]);
    expect(counts).toEqual({ error: 0, warning: 0, note: 0 });
  });

  it('was empty on a day before it was known, and says so for every position', async () => {
    expect(await chart('?knownOn=2009-12-31')).toEqual([
      'Auger pin: 2012-01-01 nothing-said',
      'Belt: 2012-01-01 nothing-said',
    ]);
    const { findings } = (await manager.get<FindingList>('/rulebook/findings?knownOn=2009-12-31&severity=warning'))
      .body;
    expect(findings.map(({ code, positionName }) => `${code} ${positionName}`)).toEqual(['gap Auger pin', 'gap Belt']);
  });
});

describe('what a draft would bring into the rulebook', () => {
  it('shows a bar that names no other part, before it is published', async () => {
    const bar = [{ part: 'HOLM/80002', reason: 'unsafe' as const, note: '' }];
    const { findings } = await whatIf(await draft('SB-1', [rule('BAR', { positions: ['BELT'], barred: bar })]));
    expect(findings).toEqual([
      {
        severity: 'warning',
        line: 'SNOW-2',
        position: 'BELT',
        sentence:
          'Snow thrower 2, Belt: rule BAR (service bulletin SB-1 of 1 Oct 2026) bars 80-002, and its paper names no part to fit instead (Belt).',
      },
    ]);
  });

  it('shows a part that is in no catalogue, and a day that no serial of the maker can tell from the day before', async () => {
    const built = { from: '2018-03-14', to: null };
    const { findings } = await whatIf(
      await draft('SB-2', [rule('LATE', { positions: ['BELT'], built, required: 'HOLM/80009' })]),
    );
    expect(findings.map(({ severity, sentence }) => `${severity}: ${sentence}`)).toEqual([
      'error: Snow thrower 2, Belt, built 14 Mar 2018 to 31 Dec 2020: 80009 is required by rule LATE (service bulletin SB-2 of 1 Oct 2026) and is in no catalogue.',
      'warning: Snow thrower 2, Belt: the answer changes for units built from 14 Mar 2018 on, and no evidence can tell that day from the day before.',
    ]);
  });

  it('shows a part required by one rule and barred by another of the same paper', async () => {
    const opens = [
      rule('ASK', { positions: ['BELT'], required: 'HOLM/80002' }),
      rule('BAN', { positions: ['BELT'], barred: [{ part: 'HOLM/80002', reason: 'unsafe', note: '' }] }),
    ];
    const { findings } = await whatIf(await draft('SB-3', opens));
    expect(findings.map(({ severity, sentence }) => `${severity}: ${sentence}`)[0]).toContain(
      'error: Snow thrower 2, Belt, built 1 Jan 2012 to 31 Dec 2020: 80-002 is both required and barred',
    );
  });
});

describe('the chain behind a verdict', () => {
  let ticket: TicketView;
  const chain = async (place: number, side = '') =>
    manager.get<PlaceExplanation>(`/tickets/${ticket.id}/places/AUG-PIN/${place}/explain${side}`);
  let before: PlaceExplanation;

  beforeAll(async () => {
    ticket = await shop.newTicket('14030001');
    const technician = await shop.as('technician');
    const moved = await technician.change('POST', `/tickets/${ticket.id}/stage`, ticket.version, { to: 'inspection' });
    const places = [1, 2].map((place) => ({
      ...{ position: 'AUG-PIN', place, condition: 'sound', fittedOn: '2019-05-01' },
      partText: place === 1 ? '70-412A' : '70-499',
    }));
    const put = await technician.change('PUT', `/tickets/${ticket.id}/places`, moved.body.version, {
      side: 'found',
      places,
    });
    expect(put.status).toBe(200);
    before = (await chain(1)).body;
  });

  it('is there as text: the question, the verdict, the ruling, then and now, and every rule looked at', () => {
    expect(before.verdict).toBe('right');
    expect(before.text[0]).toMatch(/^Asked: 70-412A at Auger pin of a Snow thrower 2, model S2, fitted on 1 May 2019/);
    expect(before.text[1]).toBe('Right: 70-412A is what belongs here by parts list PL-7 of 1 Jan 2010.');
    expect(before.text.at(-1)).toContain('rule PIN-EARLY version 1 stands in parts list PL-7 of 1 Jan 2010');
    expect(before.rules.map(({ key }) => key)).toEqual(['PIN-EARLY']);
  });

  it('is there as a file that the library alone judges again', async () => {
    const { record, verdict } = (await chain(2)).body;
    expect(verdict).toBe('wrong');
    const { judgement } = replay(verdictRecord.parse(record));
    expect(judgement.verdict).toBe('wrong');
    expect(sayVerdict(judgement).technician).toContain('the gear case breaks first');
  });

  it('says so where nothing is recorded', async () => {
    const none = await chain(1, '?side=left');
    expect(none.status).toBe(404);
    expect((await chain(9)).status).toBe(404);
  });

  it('gives the kept verdict in the same words after a later paper has changed the answer', async () => {
    const paper = await draft('SB-9', [
      rule('PIN-NEW', {
        required: 'HOLM/70412B',
        barred: [{ part: 'HOLM/70412A', reason: 'breaks-sooner', note: '' }],
        inForce: { from: '2026-10-01', to: null },
        action: 'call-back',
      }),
    ]);
    const publish = (body: unknown) =>
      manager.change<Published & Problem>('POST', `/bulletins/${paper.id}/publish`, paper.version, body);
    const unseen = await publish({});
    expect([unseen.status, unseen.body.field]).toEqual([400, 'whatIfRevision']);
    const { revision } = await whatIf(paper);
    const seenLongAgo = await publish({ whatIfRevision: revision - 1 });
    expect([seenLongAgo.status, seenLongAgo.body.field]).toEqual([409, 'whatIfRevision']);
    expect((await publish({ whatIfRevision: revision })).status).toBe(200);
    const after = (await chain(1)).body;
    expect(after.verdict).toBe('outdated');
    expect(after.kept).toMatchObject({ verdict: 'right', sentence: before.text[1], sameWords: true });
    expect(after.kept!.text).toEqual(before.kept!.text);
  });

  it('gives it in the same words after the shop has changed how papers stand against each other', async () => {
    const { version } = (await manager.get(`/tickets/${ticket.id}`)).body;
    const technician = await shop.as('technician');
    const place = { position: 'AUG-PIN', place: 1, condition: 'sound', fittedOn: '2019-05-01', partText: '70-412A' };
    const body = { side: 'found', places: [place] };
    expect((await technician.change('PUT', `/tickets/${ticket.id}/places`, version, body)).status).toBe(200);
    const under = (await chain(1)).body;
    expect(under.kept).toMatchObject({ verdict: 'outdated', sameWords: true });
    const standing = (await manager.get<{ standing: Record<string, number> }>('/settings')).body.standing;
    await manager.settle('PATCH', '/settings', { standing: { ...standing, 'parts-list': 90 } });
    const turned = (await chain(1)).body;
    expect(turned.verdict).toBe('right');
    expect(turned.kept).toEqual(under.kept);
  });

  it('leaves the chart of the day before as it was', async () => {
    expect(await chart('?knownOn=2026-11-19')).toContain('Auger pin: 2012-01-01 70-412A, 2016-01-01 70-412B');
  });
});
