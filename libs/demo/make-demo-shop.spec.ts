import { EvidenceListSchema, inferBuildDays, prepareShop } from '../build-date';
import { readRulebookDocument } from '../contracts';
import { civilDateOf, day, dayOf, type Day } from '../day';
import { fastenerSpecSchema, shearJointSchema } from '../fastener';
import { createJudge, fitRuleFile, readRulebook, type SourceFile } from '../fit-rules';
import { readPartNumber } from '../part-number';
import { demoRulebookFile, KEPT_BULLETIN, makeDemoShop, type DemoShop } from '.';
import { countKeptUnits } from './testing/kept-units';

const TODAY = day('2026-11-25');
const shop = makeDemoShop(1, TODAY);

const MS_PER_DAY = 86_400_000;
const sourceOnly = ({ key, kind, publisher, number, title, issued, effective, received }: SourceFile): SourceFile => ({
  key,
  kind,
  publisher,
  number,
  title,
  issued,
  effective,
  received,
});
const recorded = (one: DemoShop) =>
  one.tickets.flatMap(({ records }) => records).filter((record) => record.leftOutWhy === null);
const lookBackFrom = (today: Day): Day => {
  const { year, month, dayOfMonth } = civilDateOf(today);
  return dayOf(year - 3, month, dayOfMonth);
};
const builtOf = (one: DemoShop) => {
  const prepared = prepareShop({ serialSchemes: [...one.schemes], standardEditions: [...one.editions] });
  return one.units.map(({ evidence }) => inferBuildDays(evidence, prepared, one.today));
};

describe('makeDemoShop', () => {
  it('makes a shop of the named size', () => {
    expect(shop.locations).toHaveLength(2);
    expect(shop.benches).toHaveLength(5);
    expect(shop.people).toHaveLength(7);
    expect(shop.makers).toHaveLength(3);
    expect(shop.lines).toHaveLength(8);
    expect(shop.lines.flatMap(({ positions }) => positions)).toHaveLength(60);
    expect(new Set(shop.parts.map(({ key }) => key)).size).toBe(250);
    expect(shop.sources).toHaveLength(40);
    expect(new Set(shop.rules.map(({ key }) => key)).size).toBe(180);
    expect(shop.units).toHaveLength(1_200);
    expect(shop.tickets).toHaveLength(2_000);
    expect(shop.tickets.filter(({ closedAt }) => closedAt === null)).toHaveLength(60);
    expect(Math.abs(recorded(shop).length - 12_000)).toBeLessThan(600);
  });

  it('makes the same shop again from the same seed, and another from another', () => {
    expect(JSON.stringify(makeDemoShop(1, TODAY)) === JSON.stringify(shop)).toBe(true);
    expect(makeDemoShop(2, TODAY).owners).not.toEqual(shop.owners);
  });

  it('writes rules, joints and fasteners that their schemas accept', () => {
    for (const rule of shop.rules) expect(fitRuleFile.safeParse(rule).error?.message).toBeUndefined();
    for (const source of shop.sources) {
      for (const rule of source.draft?.opens ?? []) expect(fitRuleFile.safeParse(rule).error?.message).toBeUndefined();
    }
    for (const { fastener } of shop.parts)
      if (fastener) expect(fastenerSpecSchema.safeParse(fastener).success).toBe(true);
    for (const { joint } of shop.lines.flatMap(({ positions }) => positions)) {
      if (joint) expect(shearJointSchema.safeParse(joint).success).toBe(true);
    }
  });

  it('names in its rules only lines, models, options, positions, parts, sources and rules that exist', () => {
    const parts = new Set(shop.parts.map(({ key }) => key));
    const keys = new Set(shop.rules.map(({ key }) => key));
    const sources = new Set(shop.sources.map(({ key }) => key));
    for (const rule of [...shop.rules, ...shop.sources.flatMap(({ draft }) => draft?.opens ?? [])]) {
      const line = shop.lines.find(({ code }) => code === rule.line)!;
      expect(line.positions.map(({ code }) => code)).toEqual(expect.arrayContaining(rule.positions));
      expect(line.models.map(({ number }) => number)).toEqual(expect.arrayContaining(rule.models));
      expect(line.options.map(({ code }) => code)).toEqual(
        expect.arrayContaining(rule.options.map(({ option }) => option)),
      );
      expect(sources.has(rule.source)).toBe(true);
      for (const part of [rule.required, ...rule.allowed, ...rule.barred.map((bar) => bar.part)]) {
        expect(part === null || parts.has(part)).toBe(true);
      }
      for (const other of rule.replaces) expect(keys.has(other)).toBe(true);
    }
  });

  it('records only places that exist, once a side, with parts that exist and numbers their maker would print', () => {
    const lines = new Map(shop.lines.map((line) => [line.code, line]));
    const parts = new Map(shop.parts.map((part) => [part.key, part]));
    const wrong: string[] = [];
    for (const ticket of shop.tickets) {
      const line = lines.get(shop.units[ticket.unit]!.line)!;
      const seen = new Set<string>();
      for (const record of ticket.records) {
        const { side, place, part, candidates, partText, pack } = record;
        const position = line.positions.find(({ code }) => code === record.position)!;
        const here = `${ticket.number} ${record.position} ${place} ${side}`;
        if (place < 1 || place > position.placeNames.length || seen.has(here)) wrong.push(here);
        seen.add(here);
        if ([...(part === null ? [] : [part]), ...candidates].some((key) => !position.parts.includes(key)))
          wrong.push(here);
        if (part === null) continue;
        const { maker } = parts.get(part)!;
        const reading = readPartNumber(partText!, shop.makers.find(({ code }) => code === maker)!.numberRules);
        const read = reading.ok ? `${maker}/${reading.number.canonical} ${reading.number.pack}` : 'nothing';
        if (read !== `${part} ${pack}`) wrong.push(here);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('left what the papers of that day, as far as the shop had them, call right, save a few mistakes of the bench', () => {
    const read = readRulebook({
      rules: shop.rules,
      sources: shop.sources.filter(({ state }) => state === 'published').map(sourceOnly),
      supersessions: shop.supersessions,
    });
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(' '));
    const judge = createJudge(read.value, { today: TODAY, now: TODAY * MS_PER_DAY });
    const mistakes: string[] = [];
    let looked = 0;
    for (const ticket of shop.tickets.filter(({ handedOver }, at) => handedOver && at % 8 === 0)) {
      const { line, model, truth } = shop.units[ticket.unit]!;
      const facts = {
        line,
        model,
        options: truth.options,
        serial: truth.serial,
        built: [{ from: truth.built, to: truth.built + 1 }],
      };
      const day = Math.floor(ticket.closedAt! / MS_PER_DAY);
      for (const { side, position, part, fittedOn } of ticket.records) {
        if (side !== 'left' || fittedOn !== day) continue;
        const { outcome } = judge.ruling(facts, position, { inForceOn: day, knownAt: ticket.closedAt! }).pieces[0]!;
        looked++;
        const said = outcome.kind === 'decided' ? [outcome.saying.required, ...outcome.saying.allowed] : [part];
        if (!said.includes(part)) mistakes.push(`${ticket.number} ${position}`);
      }
    }
    expect(looked).toBeGreaterThan(200);
    expect(mistakes.length / looked).toBeLessThan(0.03);
    expect(mistakes.filter((one) => one.endsWith('AUG-PIN'))).toEqual([]);
  });

  it('keeps one open ticket at most for a unit, and no stay that begins before the last one ended', () => {
    const last = new Map<number, number>();
    for (const { unit, openedAt, closedAt } of shop.tickets) {
      expect(openedAt).toBeGreaterThan(last.get(unit) ?? 0);
      if (closedAt !== null) expect(closedAt).toBeGreaterThan(openedAt);
      last.set(unit, closedAt ?? Infinity);
    }
  });

  it('holds mixtures, missing and sheared parts, marks without numbers, and evidence that contradicts itself', () => {
    const records = recorded(shop);
    expect(records.filter(({ marks }) => marks !== null).length).toBeGreaterThan(80);
    expect(records.filter(({ condition }) => condition === 'sheared').length).toBeGreaterThan(200);
    expect(records.filter(({ condition }) => condition === 'missing').length).toBeGreaterThan(100);
    const days = builtOf(shop);
    expect(days.filter((set) => set.length === 0).length).toBeGreaterThan(5);
    expect(days.filter((set) => set.length > 1).length).toBeGreaterThan(25);
    expect(shop.units.filter(({ serial }) => serial === null).length).toBeGreaterThan(60);
  });

  it('gives every unit evidence that the build date library accepts', () => {
    for (const { evidence } of shop.units)
      expect(EvidenceListSchema.safeParse(evidence).error?.message).toBeUndefined();
  });

  it.each(['2026-11-25', '2027-01-02', '2027-07-15', '2028-12-31'])(
    'keeps a bulletin that touches some 150 units out of the shop and several in it, made on %s',
    (text) => {
      const made = makeDemoShop(1, day(text));
      const kept = countKeptUnits(made, builtOf(made), lookBackFrom(made.today));
      expect(kept.callbacks.size).toBeGreaterThanOrEqual(120);
      expect(kept.callbacks.size).toBeLessThanOrEqual(180);
      expect(kept.flags.size).toBeGreaterThanOrEqual(4);
      expect(made.sources.find(({ key }) => key === KEPT_BULLETIN)).toMatchObject({
        state: 'draft',
        publishedAt: null,
      });
    },
  );

  it('hands its rulebook over as a file that reads back as it was written, without the drafts', () => {
    const file = demoRulebookFile(shop);
    expect(readRulebookDocument(file)).toEqual({ ok: true, document: file });
    expect(file.sources).toHaveLength(37);
    expect(JSON.parse(JSON.stringify(file))).toEqual(file);
  });
});
