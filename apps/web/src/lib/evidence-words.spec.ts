import { EVIDENCE_KINDS, EvidenceSchema } from '../../../../libs/build-date';
import { EVIDENCE_FORMS, editionValue, evidenceOf, missingField } from './evidence-words';

const TYPED: Record<string, Record<string, string>> = {
  'printed-date': { date: '2017-03' },
  'standard-edition': { edition: editionValue('ANSI B71.3', '2005') },
  'engine-family': { family: 'HZQVS.2081DA' },
  vin: { vin: '1M8GDM9AXKP042788' },
  'tyre-code': { code: '0917' },
  'part-stamp': { part: 'hose', date: '2016' },
  receipt: { date: '2018-05-02' },
  'production-span': { first: '2012' },
  'first-seen': { on: '2019-01-07' },
};

describe('the forms for evidence', () => {
  it('cover every kind but the serial, which comes from the plate', () => {
    expect([...Object.keys(EVIDENCE_FORMS), 'serial-scheme'].sort()).toEqual([...EVIDENCE_KINDS].sort());
  });

  it.each(Object.keys(EVIDENCE_FORMS))('make a %s that the library takes, and nothing of an empty form', (kind) => {
    expect(missingField(kind, {})).not.toBeNull();
    expect(missingField(kind, TYPED[kind]!)).toBeNull();
    expect(EvidenceSchema.safeParse({ ...evidenceOf(kind, TYPED[kind]!), id: 'new' }).error).toBeUndefined();
  });

  it('mean the first choice where none was made', () => {
    expect(evidenceOf('vin', TYPED['vin']!)).toMatchObject({ vehicle: 'other', checkDigit: 'required' });
    expect(evidenceOf('vin', { ...TYPED['vin'], vehicle: 'light' })).toMatchObject({ vehicle: 'light' });
  });
});
