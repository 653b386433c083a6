import { doesItFit, type FastenerSpecInput, type FitAnswer, type ShearJointInput } from './index';

const bolt: FastenerSpecInput = {
  diameterMm: 6,
  lengthMm: 40,
  thread: { pitchMm: 1, startsAtMm: 25 },
  grade: { kind: 'known', system: 'ISO 898-1', grade: '4.6' },
};
const pin: FastenerSpecInput = { ...bolt, thread: null, crossHole: { diameterMm: 2, atMm: 36 } };
const joint: ShearJointInput = { shaftRadiusMm: 10, planes: 2, holeDiameterMm: 6.4, gripMm: 32, nutAllowanceMm: 8 };

function fit(spec: FastenerSpecInput, at: ShearJointInput): FitAnswer {
  const found = doesItFit(spec, at);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.sentence).join(' '));
  return found.value;
}
const said = (answer: FitAnswer): string => answer.findings.map((finding) => finding.sentence).join(' ');

describe('does it fit', () => {
  it('says yes where hole, length and nut all suit, down to the last tenth', () => {
    expect(fit(bolt, joint)).toMatchObject({ fits: 'yes' });
    expect(fit(bolt, { ...joint, holeDiameterMm: 6 }).fits).toBe('yes');
    expect(fit(bolt, { ...joint, holeDiameterMm: 6.5 }).fits).toBe('yes');
    expect(fit({ ...bolt, lengthMm: 39.9 }, joint).fits).toBe('no');
  });

  it('counts what lies under the head and beyond the far face', () => {
    const answer = fit(bolt, { ...joint, underHeadAllowanceMm: 1.5 });
    expect(answer.fits).toBe('no');
    expect(said(answer)).toContain(
      'Too short: 40 mm (1.575 in) where 41.5 mm are needed (hub and shaft 32 mm, under the head 1.5 mm, beyond the far face 8 mm).',
    );
  });

  it('is not fooled by sums of measures', () => {
    expect(fit({ ...bolt, lengthMm: 0.3 }, { ...joint, gripMm: 0.1, nutAllowanceMm: 0.2 }).fits).toBe('yes');
  });

  it('refuses a shank too thick for the hole, and one that rattles', () => {
    expect(said(fit(bolt, { ...joint, holeDiameterMm: 5.9 }))).toContain('Too thick: 6 mm (0.236 in)');
    const loose = fit(bolt, { ...joint, holeDiameterMm: 6.6 });
    expect(loose.fits).toBe('no');
    expect(said(loose)).toContain('0.6 mm play, more than 0.5 mm, and bends before it shears');
    expect(fit(bolt, { ...joint, holeDiameterMm: 6.6, maxPlayMm: 1 }).fits).toBe('yes');
  });

  it('refuses one so long that it strikes what turns past it', () => {
    expect(fit(bolt, { ...joint, roomMm: 40 }).fits).toBe('yes');
    expect(said(fit(bolt, { ...joint, roomMm: 39 }))).toContain('Too long');
  });

  it('wants a thread for a nut', () => {
    const answer = fit({ ...bolt, thread: null }, joint);
    expect(answer.fits).toBe('no');
    expect(said(answer)).toContain('held by a nut, and this fastener has no thread');
  });

  it('wants a cotter hole that clears the far face', () => {
    const held = { ...joint, nutAllowanceMm: 0, cotterAllowanceMm: 8 };
    expect(fit(pin, held).fits).toBe('yes');
    expect(fit(pin, { ...held, gripMm: 35, cotterAllowanceMm: 5 }).fits).toBe('yes');
    expect(said(fit(pin, { ...held, gripMm: 36, cotterAllowanceMm: 4 }))).toContain('no cotter goes in');
    expect(said(fit({ ...pin, crossHole: null }, held))).toContain('no hole for it');
  });

  it('takes either keeper where the joint has both', () => {
    const both = { ...joint, cotterAllowanceMm: 8 };
    expect(fit(bolt, both).fits).toBe('yes');
    expect(fit(pin, both).fits).toBe('yes');
    expect(fit({ ...pin, crossHole: null }, both).fits).toBe('no');
  });

  it('asks for no keeper where the joint has none', () => {
    expect(fit({ ...bolt, thread: null }, { ...joint, nutAllowanceMm: 0 }).fits).toBe('yes');
  });

  it('says what is not measured rather than guess', () => {
    const bare: ShearJointInput = { shaftRadiusMm: 10, planes: 2 };
    const answer = fit(bolt, bare);
    expect(answer.fits).toBe('not-told');
    expect(answer.findings.map((finding) => [finding.field, finding.fits])).toEqual([
      ['diameter', 'not-told'],
      ['length', 'not-told'],
    ]);
    expect(fit({ ...bolt, lengthMm: null }, joint).fits).toBe('not-told');
    expect(said(fit(pin, { ...bare, cotterAllowanceMm: 4 }))).toContain('the cotter hole cannot be checked');
    expect(fit(bolt, { ...bare, holeDiameterMm: 5 }).fits).toBe('no');
  });
});
