import { EVIDENCE_KINDS, EvidenceListSchema, EvidenceSchema } from './evidence';
import { READING_EFFORT, WHERE_TO_LOOK } from './reading-effort';

const messages = (input: unknown) => EvidenceSchema.safeParse(input).error?.issues.map((issue) => issue.message) ?? [];

describe('evidence as it is entered', () => {
  it('is refused with one sentence that says what would be taken', () => {
    expect(messages({ id: 'a', kind: 'printed-date', date: '14.3.2017' })).toEqual([
      '"14.3.2017" is not a date; write a year (2017), a month (2017-03), a week (2017-W09) or a day (2017-03-14)',
    ]);
    expect(messages({ id: 'a', kind: 'first-seen', on: '2017-02-29' })).toEqual([
      '"2017-02-29" is not a day; write it as YYYY-MM-DD, such as 2017-03-14',
    ]);
    expect(messages({ id: 'a', kind: 'production-span' })).toEqual([
      'give the first production date, the last, or both',
    ]);
    expect(messages({ id: 'a', kind: 'standard-edition', standard: 'ANSI B71.3', edition: '05' })).toEqual([
      'an edition is named by its four-digit year, such as 2005',
    ]);
  });

  it('is set aside only with a reason and a name', () => {
    const receipt = { id: 'a', kind: 'receipt', date: '2017' };
    expect(EvidenceSchema.safeParse({ ...receipt, setAside: { reason: ' ', by: 'Ines' } }).success).toBe(false);
    expect(EvidenceSchema.safeParse({ ...receipt, setAside: { reason: 'other unit', by: 'Ines' } }).success).toBe(true);
  });

  it('comes in lists of at most twenty pieces, each with an id of its own', () => {
    const list = (ids: string[]) =>
      EvidenceListSchema.safeParse(ids.map((id) => ({ id, kind: 'receipt', date: '2017' }))).success;
    const ids = Array.from({ length: 21 }, (_, at) => String(at));
    expect([list(ids.slice(1)), list(ids), list(['a', 'a'])]).toEqual([true, false, false]);
  });

  it('has for every kind a place to look and an effort', () => {
    expect(EvidenceSchema.options.map((option) => option.shape.kind.value)).toEqual([...EVIDENCE_KINDS]);
    expect(Object.keys(READING_EFFORT).sort()).toEqual([...EVIDENCE_KINDS].sort());
    expect(Object.keys(WHERE_TO_LOOK).sort()).toEqual([...EVIDENCE_KINDS].sort());
  });
});
