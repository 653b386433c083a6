import { barsInWords, sayHours, share } from './bars';

describe('a picture of bars', () => {
  it('is said in words with every number', () => {
    const rows = [
      { label: 'Snow', values: [2, 1] },
      { label: 'Tillers', values: [0, 4] },
    ];
    expect(barsInWords({ series: ['Flagged', 'Not flagged'], rows, lie: true, stacked: true })).toBe(
      'Snow: flagged 2, not flagged 1. Tillers: flagged 0, not flagged 4.',
    );
  });

  it('says a share only where there is a whole', () => {
    expect([share(2, 3), share(0, 5), share(0, 0)]).toEqual(['67 %', '0 %', '']);
  });

  it('says hours in the unit a person would', () => {
    expect([null, 0.3, 1, 47.5, 48, 100].map(sayHours)).toEqual([
      'none',
      '18 min',
      '1 hour',
      '47.5 hours',
      '2.0 days',
      '4.2 days',
    ]);
  });
});
