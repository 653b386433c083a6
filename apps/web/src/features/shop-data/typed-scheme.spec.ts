import { checked, NEW_SCHEME, typedFrom, wireFrom } from './typed-scheme';

describe('a typed scheme', () => {
  it('names the last day it was used, and is kept with the first day it no longer was', () => {
    const typed = { ...NEW_SCHEME, maker: 'HOLM', name: ' old plates ', firstDay: '2008-01-01', lastDay: '2015-12-31' };
    const wire = wireFrom(typed);
    expect(wire).toMatchObject({ name: 'old plates', validFrom: '2008-01-01', validTo: '2016-01-01' });
    expect(wire).not.toHaveProperty('source');
    expect(typedFrom({ ...wire, id: 'HOLM-A', source: 'a letter' })).toEqual({
      ...typed,
      name: 'old plates',
      source: 'a letter',
    });
  });

  it('can be tried before it has a name, but not while its fields contradict each other', () => {
    expect(checked(NEW_SCHEME).scheme).not.toBeNull();
    const twice = { ...NEW_SCHEME, fields: [...NEW_SCHEME.fields, { kind: 'year-digit' as const }] };
    expect(checked(twice)).toEqual({ scheme: null, problems: ['a scheme has at most one year field'] });
  });
});
