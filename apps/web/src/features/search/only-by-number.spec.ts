import type { SearchHits } from '../../../../../libs/contracts';
import { onlyByNumber } from './only-by-number';

const hit = (id: number, number: string, matched: string): SearchHits[number] => ({
  id,
  number,
  matched,
  stage: 'intake',
  unit: 'Talus 40',
  serial: null,
  owner: 'Ines Varga',
  bench: null,
  promisedOn: null,
  onHold: null,
  openFlags: 0,
  worst: null,
  waits: null,
  version: 1,
  closedOn: null,
});

describe('a ticket number in the search field', () => {
  const named = hit(7, '26-0661', 'number');
  const other = hit(9, '26-0700', 'serial');

  it('leads straight to its ticket as it is printed, whatever else it finds', () => {
    expect(onlyByNumber('26-0661', [named, other])).toBe(7);
    expect(onlyByNumber(' 26-0661 ', [named])).toBe(7);
  });

  it('leads there by its digits only when they find nothing else', () => {
    expect(onlyByNumber('260661', [named])).toBe(7);
    expect(onlyByNumber('260661', [other, named])).toBeNull();
  });

  it('leaves the choice to the person where no number, or more than one, was found', () => {
    expect(onlyByNumber('26-07', [other])).toBeNull();
    expect(onlyByNumber('26-07', [])).toBeNull();
    expect(onlyByNumber('26-0661', [named, hit(8, '26-0661', 'number')])).toBeNull();
  });
});
