import { describe, expect, it } from '@jest/globals';
import { buttonWords, nextStep } from './next-step';

const point = { code: 'place-not-looked-at', sentence: 'Look.', position: 'P' };
const ticket = {
  stage: 'inspection',
  closedAt: null,
  onHold: null,
  missing: [{ stage: 'inspection', points: [point] }],
} as const;
const wire = (change: object) => ({
  ...ticket,
  missing: [...ticket.missing].map((one) => ({ ...one, points: [...one.points] })),
  ...change,
});

describe('the one next thing on a ticket', () => {
  it('is the stage after the present one, with what its gate still asks for', () => {
    expect(nextStep(wire({}))).toEqual({ to: 'parts-selection', words: 'Go on to parts selection', missing: [point] });
  });

  it('says how much is missing on the button while the gate is closed', () => {
    expect(buttonWords(nextStep(wire({}))!)).toBe('Go on to parts selection: 1 missing');
    expect(buttonWords(nextStep(wire({ missing: [] }))!)).toBe('Go on to parts selection');
  });

  it('leads from the last stage out of the door', () => {
    expect(nextStep(wire({ stage: 'handover', missing: [] }))?.to).toBe('handed-over');
  });

  it('is nothing on a ticket that is closed or on hold', () => {
    expect(nextStep(wire({ onHold: 'waits for a part' }))).toBeNull();
    expect(nextStep(wire({ closedAt: '2026-01-01T00:00:00.000Z' }))).toBeNull();
  });
});
