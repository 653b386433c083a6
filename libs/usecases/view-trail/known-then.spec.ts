import { day } from '../../day';
import type { KnownOfUnit } from '../build-days/index';
import { knownOtherwise, knownThen } from './known-then';

const built = [{ from: day('2017-03-01'), to: day('2017-04-01') }];
const today: KnownOfUnit = {
  line: { id: 2, code: 'TL-40' },
  model: { number: '40A' },
  options: { 'heavy-auger': true, lights: false },
  serialScheme: 'HOLM-A',
  serialKey: '2017-03',
  built,
};

describe('what was known of a unit when an entry of its trail was written', () => {
  it('is what is known today where nothing changed', () => {
    expect(knownThen(today, [])('7.0')).toBe(today);
  });

  it('has every later change undone, and no earlier one', () => {
    const then = knownThen(today, [
      { cursor: '120.0', before: { options: { lights: false } } },
      { cursor: '9.0', before: { options: {}, line: null, model: null } },
    ]);
    expect(then('120.0')).toEqual(today);
    expect(then('119.0')).toEqual({ ...today, options: { lights: false } });
    expect(then('9.0')).toEqual({ ...today, options: { lights: false } });
    expect(then('8.0')).toEqual({ ...today, options: {}, line: null, model: null });
    expect(then('10.0')).toBe(then('119.0'));
  });

  it('tells places of one batch apart by their part, as numbers', () => {
    const then = knownThen(today, [{ cursor: '9.10', before: { serialKey: null } }]);
    expect(then('9.9').serialKey).toBeNull();
    expect(then('9.11').serialKey).toBe('2017-03');
  });
});

describe('what is known otherwise than then', () => {
  it('is named, and the order of options does not matter', () => {
    const then = { ...today, options: { lights: false, 'heavy-auger': true }, built: [...built] };
    expect(knownOtherwise(then, today)).toEqual([]);
    expect(knownOtherwise({ ...then, model: null, built: [] }, today)).toEqual(['model', 'build-days']);
    expect(knownOtherwise({ ...then, line: null, options: {}, serialKey: null }, today)).toEqual([
      'line',
      'options',
      'serial',
    ]);
  });
});
