import { inferBuildDates, prepareShop, SerialSchemeSchema, type Evidence } from '../../build-date';
import { day } from '../../day';
import { buildDatesView } from './build-dates-view';

const TODAY = day('2026-11-20');
const scheme = SerialSchemeSchema.parse({
  id: 'HOLM-A',
  maker: 'HOLM',
  name: 'year digit, month',
  validFrom: '2000-01-01',
  validTo: '2020-01-01',
  fields: [{ kind: 'year-digit' }, { kind: 'month-number' }, { kind: 'sequence', length: 3 }],
});
const shop = prepareShop({ serialSchemes: [scheme], standardEditions: [] });

function viewOf(evidence: readonly Evidence[], serialAbsent = false) {
  const answer = inferBuildDates(evidence, shop, TODAY);
  const about = { rows: [], rulings: [], maker: 'HOLM', line: null, serialAbsent, shop, today: TODAY };
  return buildDatesView({ answer, evidence, ...about });
}
const serial: Evidence = { id: 'serial', kind: 'serial-scheme', maker: 'HOLM', serial: '604017' };
const vin: Evidence = {
  id: 'vin',
  kind: 'vin',
  vin: '1M8GDM9AXKPO42788',
  vehicle: 'other',
  checkDigit: 'required',
};

describe('the possible build days for the page', () => {
  it('say what leaves a gap between them', () => {
    const view = viewOf([serial]);
    expect(view.days).toEqual([
      { from: '2006-04-01', to: '2006-05-01' },
      { from: '2016-04-01', to: '2016-05-01' },
    ]);
    expect(view.splits).toEqual([expect.stringMatching(/^Not 1 May 2006 to 31 Mar 2016, because: Serial 604017 /)]);
    expect(viewOf([serial, { id: 'r', kind: 'receipt', date: '2010' }]).splits).toEqual([]);
  });

  it('offer another reading as one of the piece that would read so', () => {
    expect(viewOf([{ ...serial, serial: '6O4017' }]).otherReadings).toMatchObject([
      { id: 'serial', kind: 'serial-scheme', serial: '604017' },
    ]);
    expect(viewOf([vin]).otherReadings).toMatchObject([{ id: 'vin', kind: 'vin', serial: '1M8GDM9AXKP042788' }]);
  });

  it('are not needed where no ruling changes within them', () => {
    expect(viewOf([serial])).toMatchObject({ needed: false, lookAt: [] });
  });
});
