import fc from 'fast-check';
import { sealsWith } from './seals';

const seals = sealsWith(() => Buffer.alloc(32, 7));

describe('what is sealed', () => {
  it('is read again with the same key about the same thing, whatever it holds, and looks different each time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (text, about) => {
        const [one, other] = [seals.seal(text, about), seals.seal(text, about)];
        expect([seals.open(one, about), seals.open(other, about)]).toEqual([text, text]);
        expect(one).not.toBe(other);
      }),
    );
  });

  it('is not read with another key, about something else, or with any byte changed', () => {
    const sealed = seals.seal('JBSWY3DPEHPK3PXP', 'person 1');
    expect(sealsWith(() => Buffer.alloc(32, 8)).open(sealed, 'person 1')).toBeNull();
    expect(seals.open(sealed, 'person 2')).toBeNull();
    const bytes = Buffer.from(sealed.slice(2), 'base64url');
    for (let at = 0; at < bytes.length; at++) {
      const changed = Buffer.from(bytes);
      changed[at]! ^= 1;
      expect(seals.open(`1.${changed.toString('base64url')}`, 'person 1')).toBeNull();
    }
  });

  it('is opened with the key from before while there is one, and renewed under the key of today once', () => {
    const sealed = seals.seal('JBSWY3DPEHPK3PXP', 'person 1');
    const [today, before] = [Buffer.alloc(32, 8), Buffer.alloc(32, 7)];
    const between = sealsWith(() => today, before);
    expect(between.open(sealed, 'person 1')).toBe('JBSWY3DPEHPK3PXP');
    const fresh = between.renew(sealed, 'person 1')!;
    expect(sealsWith(() => today).open(fresh, 'person 1')).toBe('JBSWY3DPEHPK3PXP');
    expect(seals.open(fresh, 'person 1')).toBeNull();
    expect(between.renew(fresh, 'person 1')).toBeNull();
    expect(between.renew(sealed, 'person 2')).toBeNull();
  });

  it.each(['', '1.', 'JBSWY3DPEHPK3PXP', `2.${'A'.repeat(80)}`])(
    'is not what somebody wrote down openly: %j',
    (text) => {
      expect(seals.open(text, 'person 1')).toBeNull();
    },
  );
});
